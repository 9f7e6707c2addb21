package pourwright.sheet;

import java.util.List;
import java.util.Optional;

/**
 * What stands on a sheet, in the order in which it is read.
 *
 * @param title what the job is called
 * @param facts the job in short
 * @param verdict go, change first, or stop, with its reasons
 * @param weighings what goes on the scale, in that order; none where nothing may be weighed
 * @param scaleNote how to weigh it, or why nothing is weighed
 * @param gauge what the gauge should show; empty without a vacuum
 * @param rows the timetable; none where the advice is to stop
 * @param vents how the mould stands, and its vents in the order in which to make them
 * @param picture the mould as an SVG element, where a mesh was given
 * @param cautions hazards in full
 * @param closing what goes before this sheet
 * @param version what made it
 */
public record Sheet(
        String title,
        List<Fact> facts,
        Verdict verdict,
        List<String> weighings,
        String scaleNote,
        String gauge,
        List<Row> rows,
        List<String> vents,
        Optional<String> picture,
        List<Caution> cautions,
        String closing,
        String version) {
    public Sheet {
        facts = List.copyOf(facts);
        weighings = List.copyOf(weighings);
        rows = List.copyOf(rows);
        vents = List.copyOf(vents);
        cautions = List.copyOf(cautions);
    }

    /** One line about the job. */
    public record Fact(String label, String value) {}

    /**
     * What the plan says of the job.
     *
     * @param word go, change or stop, in a sentence
     * @param first what to change before anything is opened, or why to stop
     */
    public record Verdict(String word, List<String> first) {
        public Verdict {
            first = List.copyOf(first);
        }
    }

    /** One step: when by the plan, what to do, what to look for. */
    public record Row(String at, String step, String watch) {}

    /** A hazard by its name and in full. */
    public record Caution(String hazard, String say) {}
}
