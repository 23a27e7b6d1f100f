package ringout.trace.campaign;

import ringout.trace.diagnosis.Observed;

/**
 * One search from the call-out to its end.
 *
 * @param fault identity of the hidden fault
 * @param listed whether it is in the list of suspects
 * @param stop what ended the search
 * @param claimed share of the action that the advice put first at its stop; 0 when nothing fits
 * @param right whether that action cures the hidden fault
 * @param firstRepairRight whether the first repair that was done at all, tried for being quick or not, was the right one
 * @param rank place of the hidden fault among all suspects at the stop, from 1; 0 when it is not in the list
 * @param repairRank place of its repair action, from 1; 0 when it is not in the list
 * @param minutes from the first look to the right repair, or to giving up
 * @param toStop minutes to the stop, without the repair that it advises
 * @param cured whether the right repair was done in the end
 * @param vain repairs done in vain
 * @param readings readings after the first look
 * @param seen all that was read up to the stop
 */
record Run(
        String fault,
        boolean listed,
        Stop stop,
        double claimed,
        boolean right,
        boolean firstRepairRight,
        int rank,
        int repairRank,
        double minutes,
        double toStop,
        boolean cured,
        int vain,
        int readings,
        Observed seen) {
    /** What ends a search. */
    enum Stop {
        /** One action covers the share. */
        COVERS,
        /** An action was done because it took no longer than a test, and it cured. */
        TRIED,
        /** No test tells the rest apart. */
        IN_TURN,
        /** The readings speak for something not in the model. */
        NOTHING_FITS,
        /** More steps than a search may have. */
        ENDLESS
    }
}
