package ringout.read.source;

import java.util.List;

/** Named files, on disk or in memory. Names are relative, with / between folders; {@code ..} goes up. */
public interface Folder {
    /** Name of the folder itself, used for an aircraft that has no name of its own. */
    String title();

    /** Whether a name is a folder; the empty name is this folder. */
    boolean isFolder(String name);

    /** Names of the files directly in a folder, sorted, without the folder's own name; hidden files are left out. */
    List<String> files(String folder);

    /** The content of a file. */
    Loaded load(String name);

    /** The folder a file stands in, with a closing /, or empty. */
    static String parent(String name) {
        return name.substring(0, name.lastIndexOf('/') + 1);
    }
}
