package pourwright.remedy;

import java.util.ArrayList;
import java.util.List;
import pourwright.advice.Advisor;
import pourwright.advice.Amounts;
import pourwright.advice.BadAnswer;
import pourwright.advice.Consultation;
import pourwright.advice.Verdict;
import pourwright.facts.Answer;
import pourwright.facts.Answers;
import pourwright.facts.Estimate;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.Question;
import pourwright.units.Dimension;
import pourwright.units.Show;
import pourwright.units.UnitBook;

/**
 * Where a job works, over the mass of its batch and the warmth of its room: each cell is a plan of its own.
 *
 * @param massesKg masses of the columns, kg, smallest first
 * @param roomsK room temperatures of the rows, K, warmest first
 * @param verdicts by row, then by column; null where the answers cannot be true together
 * @param column the column of the job itself
 * @param row the row of the job itself
 * @param amounts the units it is shown in
 */
public record WorkingRegion(
        List<Double> massesKg,
        List<Double> roomsK,
        List<List<Verdict>> verdicts,
        int column,
        int row,
        Amounts amounts) {
    private static final int EACH_SIDE = 4;

    /** Two columns double the mass. */
    private static final double STEP = Math.sqrt(2);

    private static final double STEP_K = 3;

    public WorkingRegion {
        massesKg = List.copyOf(massesKg);
        roomsK = List.copyOf(roomsK);
    }

    /**
     * The region around a job.
     *
     * @throws BadAnswer when nothing says how much is mixed, so there is no batch to vary
     */
    public static WorkingRegion around(Consultation c, Knowledge knowledge) {
        double mass = c.figure("mix-mass")
                .map(v -> v.si().typical())
                .orElseThrow(() -> new BadAnswer(
                        "batch-mass", "The map needs the amount to mix, for example batch-mass=\"1.2 kg\"."));
        double room = c.figure("room-temperature").map(v -> v.si().typical()).orElseThrow();
        Question q = knowledge.question("room-temperature").orElseThrow();
        double leastK = UnitBook.toSi(q.min(), q.unit(), Dimension.TEMPERATURE);
        double mostK = UnitBook.toSi(q.max(), q.unit(), Dimension.TEMPERATURE);
        List<Double> masses = new ArrayList<>();
        List<Double> rooms = new ArrayList<>();
        int row = 0;
        for (int i = -EACH_SIDE; i <= EACH_SIDE; i++) {
            masses.add(i == 0 ? mass : rounded(mass * Math.pow(STEP, i)));
        }
        for (int i = EACH_SIDE; i >= -EACH_SIDE; i--) {
            double k = room + i * STEP_K;
            if (i == 0) {
                row = rooms.size();
            }
            if (i == 0 || k >= leastK && k <= mostK) {
                rooms.add(k);
            }
        }
        List<List<Verdict>> verdicts = new ArrayList<>();
        for (double k : rooms) {
            List<Verdict> line = new ArrayList<>();
            for (double kg : masses) {
                line.add(k == room && kg == mass ? c.verdict() : verdict(c.answers(), kg, k, knowledge));
            }
            verdicts.add(line);
        }
        return new WorkingRegion(masses, rooms, verdicts, EACH_SIDE, row, Amounts.of(c.answers()));
    }

    private static Verdict verdict(Answers answers, double kg, double roomK, Knowledge knowledge) {
        double grams = UnitBook.fromSi(kg, "g", Dimension.MASS);
        double celsius = UnitBook.fromSi(roomK, "°C", Dimension.TEMPERATURE);
        Answers job = answers.with("amount-by", new Answer.Choice("mass"), "mass")
                .with("batch-mass", exactly(kg, "g", Dimension.MASS), grams + " g")
                .with("room-temperature", exactly(roomK, "°C", Dimension.TEMPERATURE), celsius + " °C");
        try {
            return Advisor.consult(job, knowledge).verdict();
        } catch (BadAnswer e) {
            return null;
        }
    }

    private static Answer exactly(double si, String unit, Dimension d) {
        return new Answer.Quantity(Estimate.exactly(si), unit, Show.quantity(si, unit, d));
    }

    /** Two digits that count, as a scale is read. */
    private static double rounded(double kg) {
        double scale = Math.pow(10, 1 - Math.floor(Math.log10(kg)));
        return Math.round(kg * scale) / scale;
    }

    /** How many cells have this verdict. */
    public long count(Verdict verdict) {
        return verdicts.stream().flatMap(List::stream).filter(v -> v == verdict).count();
    }
}
