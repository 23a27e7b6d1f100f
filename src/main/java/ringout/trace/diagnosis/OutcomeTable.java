package ringout.trace.diagnosis;

/** Where the chances of the outcomes come from; asked once a question, when the question first matters. */
@FunctionalInterface
public interface OutcomeTable {
    /**
     * Chances of a question.
     *
     * @param question number of the question in the problem
     * @return for each suspect in order, and if wanted one row more for something not in the model (else all outcomes are as likely), the chance of each outcome, summing to 1; a row of ones says that the suspect predicts
     *     nothing of this question, so that any outcome agrees with it
     */
    double[][] rows(int question);
}
