package ringout.draw.ink;

/** Something drawn; later ink covers earlier ink. */
public sealed interface Ink permits Cluster, Stroke, Patch, Words {
    /** {@return what it stands for} */
    Tag tag();
}
