package pourwright.bench;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Threads;
import org.openjdk.jmh.annotations.Warmup;
import pourwright.advice.Advisor;
import pourwright.advice.Consultation;

/**
 * One warm consultation with the full rule book: answers in, advice out. One thread on one core, so the compiler and the
 * collector take their share of the same core. The shipped cases take turns; the goal is 1 ms.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Threads(1)
@Fork(
        value = 1,
        jvmArgs = {"-XX:ActiveProcessorCount=1", "-XX:+UseSerialGC", "-Xmx512m"})
@Warmup(iterations = 5, time = 4)
@Measurement(iterations = 5, time = 4)
public class ConsultBench {
    private Jobs jobs;
    private int turn;

    /** Reads knowledge and cases, outside the time that is measured. */
    @Setup
    public void read() {
        jobs = Jobs.shipped();
    }

    /** A whole consultation: facts, figures, both bases of rules, timetable, findings with their words. */
    @Benchmark
    public Consultation consult() {
        return Advisor.consult(jobs.job(turn++), jobs.knowledge());
    }
}
