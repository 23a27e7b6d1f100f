package ringout.read.source;

/** What came of opening a file. */
public sealed interface Loaded {
    /**
     * The file's content.
     *
     * @param content all bytes; not copied, so do not change them
     */
    @SuppressWarnings("ArrayRecordComponent") // a file may be large: handed on, never compared
    record Bytes(byte[] content) implements Loaded {}

    /**
     * There is nothing to read.
     *
     * @param why in words, such as "there is no such file"
     */
    record Absent(String why) implements Loaded {}
}
