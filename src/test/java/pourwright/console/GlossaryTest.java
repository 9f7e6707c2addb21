package pourwright.console;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import pourwright.figures.FigureBook;
import pourwright.knowledge.Json;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.KnowledgeReader;

/** Whoever meets a word of the trade in any text can ask what it means. */
class GlossaryTest {
    private static final Knowledge KNOWLEDGE = KnowledgeReader.read(Path.of("knowledge"));

    /** Parts that are read or typed and not said. */
    private static final Set<String> NOT_SAID = Set.of("says", "short", "also", "tries", "picture", "source", "set");

    /** Words of the trade, gathered from handbooks of casting, mould making and vacuum work. */
    private static final List<String> TRADE = List.of(
            ("absolute gauge,absolute pressure,acrylic,addition cure,air inhibition,air release agent,air trap,alginate,"
                            + "alpha gypsum,altitude,amine,amine blush,ammonia,back-fill,bake,barometer,barrier coat,batch,bleed,"
                            + "bleed valve,bleed water,blind pocket,block mould,boil-off,boiling point,bottom fill,brush coat,"
                            + "bubble,bughole,bump cycle,bump,carbon dioxide,catalyst,catch pot,cavity,centrifuge,cfm,check valve,"
                            + "clamp,clay,closed mould,cold joint,cold trap,concrete,condensation cure,conductance,core,crack,"
                            + "craze,creep,crest,cross-linker,crystallise,cure,data sheet,dead volume,deaeration,degas,demould,"
                            + "density,desiccator,detail coat,dew point,diaphragm pump,double cup,draft,drill mixer,dry gas,dye,"
                            + "ejector,epoxy,exhaust,exotherm,extraction,feed pot,filler,filter,fin,fish-eye,flash,flash point,"
                            + "flask,flow line,foam,fold,form oil,free-air speed,froth,full cure,gas ballast,gasket,gate,gauge,"
                            + "gauge pressure,gel,gel coat,gel time,gloves,goggles,gypsum,hardener,hardness,haze,head,head room,"
                            + "heat gun,heat of cure,hold,humidity,hydration,hydrogen,hygroscopic,ignition,infusion,inhg,"
                            + "inhibition,inhibitor,insert,isocyanate,jacket,kelvin,key,lacquer,laminate,latex,leak,leak rate,"
                            + "lift,linear shrinkage,liquid ring,master,mbar,metal powder,mist,mix ratio,mma,monomer,mould,"
                            + "mould release,nitrile,nucleation,off-ratio,oil mist,open mould,outgassing,overhang,parting line,"
                            + "patch test,peroxide,petroleum jelly,pigment,pinhole,piston pump,plaster,plasticiser,platinum,polyester,"
                            + "polyol,polysulfide,polyurethane,porous,porosity,post-cure,pot life,pressure cure,pressure pot,"
                            + "pressure vessel,promoter,pull,pump-down time,pumping speed,rating plate,regulator,release,"
                            + "release agent,relief valve,resin,rest,retarder,rise test,riser,ropy,rotary vane,sag,scale,scrape,"
                            + "scroll pump,sds,safety data sheet,sealed,seam,sensitised,settle,shatter,shelf life,shell,shellac,shore,"
                            + "shore hardness,shrinkage,silicone,silicone fluid,sink,skin,slurry,slush,soak,spark,sparge,specific gravity,"
                            + "sprue,stir,strip,stroke,styrene,sulphur,sulphur clay,sulphur-free,surface tension,surfactant,sweating,"
                            + "swell,syringe,tack,tack-free,tacky,talc,thinner,thin-stream pour,thixotrope,thixotropic,tin,twin,"
                            + "ullage,ultimate pressure,undercut,vacuum,vacuum chamber,valve,vane,vapour pressure,vent,vibration,"
                            + "vinyl ester,virtual leak,viscosity,void,volatile,vulcanise,warp,water bath,wax,wetting,witness,"
                            + "working time,yellowing,yield stress")
                    .split(","));

    private static String texts() {
        List<String> all = new ArrayList<>();
        try (Stream<Path> known = Files.walk(Path.of("knowledge"));
                Stream<Path> rules = Files.walk(Path.of("rules"))) {
            Stream<Path> files = Stream.concat(known, rules);
            for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
                String name = file.toString().replace('\\', '/');
                if (name.endsWith(".drl")) {
                    Pattern.compile("\"([^\"\\n]* [^\"\\n]*)\"")
                            .matcher(Files.readString(file))
                            .results()
                            .forEach(r -> all.add(r.group(1)));
                } else if (name.endsWith(".json")
                        && !name.endsWith(".cases.json")
                        && !name.contains("/schemas/")
                        && !name.endsWith("/sources.json")) {
                    walk(Json.read(Files.readString(file)), all);
                }
            }
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
        FigureBook.all().forEach(f -> all.addAll(List.of(f.asks(), f.words(), f.valid())));
        return String.join("\n", all).toLowerCase(Locale.ROOT);
    }

    private static void walk(JsonNode node, List<String> all) {
        if (node.isTextual() && node.textValue().contains(" ")) {
            all.add(node.textValue());
        }
        if (node.isArray()) {
            node.forEach(n -> walk(n, all));
        }
        node.properties().forEach(e -> {
            if (!NOT_SAID.contains(e.getKey())) {
                walk(e.getValue(), all);
            }
        });
    }

    private static List<String> occurring(String texts, String word) {
        return Pattern.compile("(?<![\\w-])" + Pattern.quote(word) + "(?:s|es|ed|ing)?(?![\\w-])")
                .matcher(texts)
                .results()
                .map(r -> r.group())
                .distinct()
                .toList();
    }

    @Test
    void everyTradeWordOfAnyTextIsDefinable() {
        String texts = texts();
        Set<String> unknown = new TreeSet<>();
        int used = 0;
        for (String word : TRADE) {
            List<String> forms = occurring(texts, word);
            used += forms.isEmpty() ? 0 : 1;
            forms.stream()
                    .filter(f -> TermPage.headword(f, KNOWLEDGE).isEmpty())
                    .forEach(unknown::add);
        }
        assertThat(used).isGreaterThan(180);
        assertThat(unknown).isEmpty();
    }

    @Test
    void everyHeadwordAndItsFormsAreFoundWhereTheyOccur() {
        String texts = texts();
        Set<String> unknown = new TreeSet<>();
        KNOWLEDGE.terms().forEach((head, term) -> {
            assertThat(TermPage.headword(head, KNOWLEDGE)).contains(head);
            term.also()
                    .forEach(a ->
                            assertThat(TermPage.headword(a, KNOWLEDGE)).as(a).isPresent());
            occurring(texts, head.toLowerCase(Locale.ROOT)).stream()
                    .filter(f -> TermPage.headword(f, KNOWLEDGE).isEmpty())
                    .forEach(unknown::add);
        });
        assertThat(unknown).isEmpty();
    }

    @Test
    void theSourceIsSaidAndCloseWordsAre() {
        TermPage page = new TermPage(KNOWLEDGE, 80);
        assertThat(page.lines("gel time")).anyMatch(l -> l.startsWith("  source: "));
        assertThat(page.lines("degassing").get(0)).startsWith("degas: ");
        assertThat(page.lines("Demolded").get(0)).startsWith("demould: ");
        assertThat(String.join(" ", page.lines("viscosty"))).contains("Close to it: viscosity");
        assertThat(page.lines("")).hasSize(1);
    }
}
