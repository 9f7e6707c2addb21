package pourwright.diagnosis;

import pourwright.knowledge.Knowledge;

/**
 * The words of evidence in decibans (ten times the decimal log of a likelihood ratio, after I. J. Good, Probability and
 * the Weighing of Evidence, 1950), and the limits of asking. All of them are named guidelines.
 */
final class Scale {
    private static final double BASE = 10;

    private final Knowledge knowledge;

    Scale(Knowledge knowledge) {
        this.knowledge = knowledge;
    }

    /** Whole decibans of a word of strength. */
    int decibans(String word) {
        return (int) Math.round(knowledge.guidelineSi("evidence-" + word));
    }

    /** All evidence for one cause together counts this much at most, either way. */
    double cap() {
        return knowledge.guidelineSi("evidence-cap");
    }

    /** The first cause must lead the second by this much for the asking to stop. */
    double lead() {
        return knowledge.guidelineSi("evidence-lead");
    }

    /** The first cause must have this chance for the asking to stop before its time. */
    double settled() {
        return knowledge.guidelineSi("cause-settled");
    }

    /** The most observations worth asking for. */
    double mostQuestions() {
        return knowledge.guidelineSi("observations-at-most");
    }

    /** The chance that a person cannot answer, by how the answer is found: look, recall or test. */
    double unanswered(String effort) {
        return knowledge.guidelineSi("unanswered-" + effort);
    }

    /** A cause that nothing makes likely still has this chance. */
    double least() {
        return knowledge.guidelineSi("rarest-cause");
    }

    /** Below this chance of the first cause, the picture fits none well. */
    double fits() {
        return knowledge.guidelineSi("picture-fits");
    }

    static double probability(double decibans) {
        return 1 / (1 + Math.pow(BASE, -decibans / BASE));
    }

    static double decibans(double probability) {
        return BASE * Math.log10(probability / (1 - probability));
    }
}
