package pourwright.console;

import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import pourwright.facts.Answers;
import pourwright.interview.Interviewer;
import pourwright.knowledge.Knowledge;

/** A job that tells of every question it asks, with the answers it was asked after. */
record WatchedJob(Job job, BiConsumer<Interviewer.Next, Answers> asked) implements Job {
    @Override
    public Optional<Interviewer.Next> next(Answers answers) {
        Optional<Interviewer.Next> next = job.next(answers);
        next.ifPresent(n -> asked.accept(n, answers));
        return next;
    }

    @Override
    public String word() {
        return job.word();
    }

    @Override
    public Knowledge knowledge() {
        return job.knowledge();
    }

    @Override
    public boolean usesKit() {
        return job.usesKit();
    }

    @Override
    public boolean endsWithItsResult() {
        return job.endsWithItsResult();
    }

    @Override
    public Set<String> relevant(Answers answers) {
        return job.relevant(answers);
    }

    @Override
    public Optional<String> tooEarly(Answers answers) {
        return job.tooEarly(answers);
    }

    @Override
    public Optional<Doubt> doubt(Answers answers) {
        return job.doubt(answers);
    }

    @Override
    public Optional<String> invitation(Answers answers) {
        return job.invitation(answers);
    }

    @Override
    public Heard hear(String text) {
        return job.hear(text);
    }

    @Override
    public Result result(Answers answers, int width, boolean plain) {
        return job.result(answers, width, plain);
    }
}
