package pourwright.cli;

import java.util.List;
import pourwright.advice.BadAnswer;
import pourwright.casebook.AnswersJson;
import pourwright.console.Clean;
import pourwright.facts.Answers;

/** Answers given on the command line as {@code id=value}. */
final class Given {
    private Given() {}

    static Answers read(List<String> words, AnswersJson reader) {
        Answers answers = Answers.NONE;
        for (String word : words) {
            int at = word.indexOf('=');
            if (at <= 0) {
                throw new BadAnswer(
                        "answers",
                        "\"" + Clean.quoted(word)
                                + "\" is not an answer. Give answers as id=value, for example material=tin-silicone.");
            }
            answers = reader.with(answers, word.substring(0, at).strip(), word.substring(at + 1));
        }
        return answers;
    }

    /** The answers of a case, with those of the command line before them. */
    static Answers over(Answers given, Answers ofCase) {
        Answers all = given;
        for (var e : ofCase.all().entrySet()) {
            if (!given.has(e.getKey())) {
                all = all.with(e.getKey(), e.getValue().answer(), e.getValue().raw());
            }
        }
        return all;
    }
}
