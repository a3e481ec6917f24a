package saddlebar.ui.desk;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.eclipse.jface.preference.IPreferenceStore;

/** The commissions opened last, the latest first; kept in the preferences. */
public final class RecentCommissions {
    static final String KEY = "recentCommissions";
    static final int MOST = 8;

    private final IPreferenceStore preferences;

    public RecentCommissions(IPreferenceStore preferences) {
        this.preferences = preferences;
    }

    public List<Path> all() {
        List<Path> paths = new ArrayList<>();
        Arrays.stream(preferences.getString(KEY).split("\n")).filter(line -> !line.isBlank()).forEach(line -> {
            try {
                paths.add(Path.of(line));
            } catch (InvalidPathException e) {
                return; // edited by hand: the others are still good
            }
        });
        return paths;
    }

    public void opened(Path path) {
        List<Path> paths = new ArrayList<>(all());
        paths.remove(path);
        paths.add(0, path);
        write(paths.subList(0, Math.min(MOST, paths.size())));
    }

    /** Takes out one that cannot be opened any more. */
    public void forget(Path path) {
        List<Path> paths = new ArrayList<>(all());
        if (paths.remove(path)) {
            write(paths);
        }
    }

    private void write(List<Path> paths) {
        preferences.setValue(KEY, String.join("\n", paths.stream().map(Path::toString).toList()));
    }
}
