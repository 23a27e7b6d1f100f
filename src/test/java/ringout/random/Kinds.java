package ringout.random;

import java.util.List;
import java.util.stream.Stream;

/** All kinds of mistakes. */
final class Kinds {
    private Kinds() {}

    static List<Kind> all() {
        return Stream.of(
                        BusFaults.all(),
                        SettingFaults.all(),
                        OutputFaults.all(),
                        PowerFaults.all(),
                        CurrentFaults.all(),
                        SignalFaults.all(),
                        ListFaults.all())
                .flatMap(List::stream)
                .toList();
    }
}
