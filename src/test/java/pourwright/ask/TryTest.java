package pourwright.ask;

import java.util.*;
import org.junit.jupiter.api.Test;
import pourwright.advice.*;
import pourwright.rulebook.*;

class TryTest {
    @Test
    void t() {
        RuleProse prose = new RuleProse(Asked.KNOWLEDGE, Map.of());
        int n = 0;
        for (RuleBook b : List.of(RuleBook.method(), RuleBook.judge(), RuleBook.kit(), RuleBook.diagnosis()))
            for (RuleCard c : b.cards()) {
                try {
                    RuleText r = RuleText.of(c);
                    var cs = prose.conditions(r);
                    var t = prose.conclusions(r);
                    if (n++ % 60 == 0)
                        System.out.println(
                                c.id() + "\n   when " + cs + "\n   then " + t + "\n  " + prose.guidelines(r));
                } catch (RuntimeException e) {
                    System.out.println(c.id() + " " + e);
                }
            }
        System.out.println(n + " rules");
        // agreement of Alternative with rules that fired
        List<RuleText> all = new ArrayList<>();
        for (RuleBook b : List.of(RuleBook.method(), RuleBook.judge()))
            b.cards().forEach(c -> all.add(RuleText.of(c)));
        int agree = 0;
        Map<String, Integer> differ = new TreeMap<>();
        for (Consultation c : Asked.recorded()) {
            var facts = Facts.of(c, Asked.KNOWLEDGE);
            for (RuleText r : all) {
                boolean m = new Alternative(r).lacking(facts) == 0;
                if (m == c.rulesFired().contains(r.card().id())) agree++;
                else differ.merge(r.card().id() + " " + m, 1, Integer::sum);
            }
        }
        System.out.println(agree + " agree; " + differ);
        for (String w : List.of(
                "degas the mix",
                "degas in the mould",
                "pressure cure",
                "vents",
                "go",
                "stop",
                "cup too small",
                "inhibition",
                "bleed valve",
                "leak",
                "exotherm"))
            System.out.println(w + " -> "
                    + WantedWords.find(w, Asked.KNOWLEDGE)
                            .map(f -> f.wanted().id() + " " + f.exact() + " "
                                    + f.others().stream().map(Wanted::id).toList()));
        Consultation c = Asked.plan(
                "material=tin-silicone",
                "job=rubber-around-master",
                "batch-mass=1.2 kg",
                "kit=vacuum",
                "cup-volume=2 L",
                "bump-cycles=yes",
                "chamber-volume=20 L",
                "pump-speed=3 cfm",
                "pot-life=60 min");
        for (int i = 0; i < 2; i++)
            for (String w : List.of(
                    "go",
                    "stop",
                    "degas-in-mould",
                    "pressure-cure",
                    "vents",
                    "degas-before-thickening",
                    "cup-too-small",
                    "platinum-on-sulphur-clay",
                    "froth-reaches-the-lid",
                    "tilt",
                    "kit-holds")) {
                var f = WantedWords.find(w, Asked.KNOWLEDGE);
                if (f.isEmpty()) {
                    System.out.println("none " + w);
                    continue;
                }
                long t0 = System.nanoTime();
                WhyNotAnswer a = WhyNot.of(c, f.get().wanted(), Asked.KNOWLEDGE);
                if (i == 1) {
                    System.out.println(f.get().wanted() + " tried " + a.tried() + " proved " + a.proved() + " ms "
                            + (System.nanoTime() - t0) / 1e6 + " already " + a.already());
                    a.ways().stream()
                            .limit(8)
                            .forEach(x -> System.out.println(
                                    "    " + x.grade() + " " + x.after().verdict() + " "
                                            + x.changes().stream()
                                                    .map(s -> s.question() + "=" + s.typed())
                                                    .toList()));
                }
            }
        for (int i = 0; i < 2; i++) {
            long t0 = System.nanoTime();
            var s = Sensitive.of(c, Asked.KNOWLEDGE);
            if (i == 1) {
                System.out.println("sens ms " + (System.nanoTime() - t0) / 1e6);
                s.stream()
                        .limit(12)
                        .forEach(x -> System.out.println(x.question() + " " + x.why() + " " + x.turnsVerdict() + " "
                                + x.moved() + " " + x.marginS() / 60 + " " + x.marginShare() + " "
                                + x.trials().stream()
                                        .map(t -> t.setting().typed() + ":"
                                                + t.difference().after().verdict())
                                        .toList()));
            }
        }
    }
}
