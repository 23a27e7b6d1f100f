package ringout.bench;

import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.Locale;
import ringout.trace.campaign.Campaign;
import ringout.trace.campaign.SmallSearches;
import ringout.trace.campaign.Tally;

/**
 * Hidden single faults on the samples, searched by a technician who follows the advice. Arguments: how many faults in all (1000 unless
 * said), and the seed (1 unless said).
 */
public final class HiddenFaults {
    private static final List<String> SAMPLES = List.of("linewarden", "dewmaker");

    /** Searches small enough for an exact plan. */
    private static final int SMALL = 200;

    private HiddenFaults() {}

    /** Searches and prints; see the class. */
    public static void main(String[] arguments) {
        int count = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 1000;
        long seed = arguments.length > 1 ? Long.parseLong(arguments[1]) : 1;
        Tally all = new Tally();
        for (String sample : SAMPLES) {
            Campaign campaign = Campaign.on(sample);
            double before = cpuSeconds();
            Tally tally = campaign.run(count / SAMPLES.size(), seed);
            print(
                    "%s: %d candidates, latent %.3f by number, %.3f by weight; %.1f s of processor%n%s",
                    sample,
                    campaign.dictionary().entries().size(),
                    campaign.dictionary().latentShare(),
                    campaign.dictionary().latentWeight(),
                    cpuSeconds() - before,
                    tally);
            all.addAll(tally);
        }
        print("all:%n%s", all);
        SmallSearches small = SmallSearches.on(SAMPLES.get(0), SMALL / 2, seed);
        small.addAll(SmallSearches.on(SAMPLES.get(1), SMALL / 2, seed));
        print("%s", small);
    }

    private static double cpuSeconds() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() / 1e9;
    }

    @SuppressWarnings("SystemOut") // a command of its own
    private static void print(String format, Object... values) {
        System.out.println(String.format(Locale.ROOT, format, values));
    }
}
