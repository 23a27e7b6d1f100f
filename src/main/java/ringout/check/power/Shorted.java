package ringout.check.power;

import ringout.check.form.Sound;
import ringout.finding.Draft;

/** A supply that is shorted, or a pack that is turned round: nothing else about that supply means anything. */
final class Shorted {
    private static final String[] CONSEQUENCES = {
        Sound.SUPPLY,
        "P04",
        "P06",
        "P07",
        "P08",
        "P09",
        "P11",
        "P12",
        "P13",
        "P14",
        "P15",
        "P16",
        "P17",
        "P18",
        "P19",
        "P20",
        "P21",
        "P22",
        "P23",
        "P24",
        "P25",
        "P26",
        "P27",
        "P28",
        "P29",
        "P30",
        "P31",
        "P32",
        "P33",
        "P34",
        "P35",
        "P36",
        "P37"
    };

    private Shorted() {}

    /** Lets a finding explain whatever presumes a sound supply. */
    static Draft explains(Draft draft) {
        return draft.explains(CONSEQUENCES);
    }
}
