package ringout.synthetic;

/** Takes the records of an aircraft as they are made. */
interface Sink {
    /** A record of one of the lists of an aircraft. */
    void add(String list, Row row);

    /** A word of one of the lists of words of an aircraft. */
    void word(String list, String text);

    /** A lead that was made, for whoever wants to spoil it. */
    void made(Made made);
}
