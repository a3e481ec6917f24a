package saddlebar.ui.begin;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.osgi.util.NLS;

import saddlebar.model.commission.UnitSystem;
import saddlebar.ui.Messages;

/**
 * A new commission as it is typed, not yet right perhaps. No widget, so that plain tests cover it.
 *
 * @param title  as typed
 * @param folder as typed
 * @param shared whether it joins a shared studio
 * @param studio folder of that studio, as typed
 * @param units  as chosen
 */
record NewForm(String title, String folder, boolean shared, String studio, UnitSystem units) {
    private static final String COMMISSION = "commission.saddlebar";
    private static final String STUDIO = "studio.saddlebar";

    /** Words under a field: what is wrong with it, or what will come of it. */
    record Words(boolean wrong, String text) {
        static final Words NONE = new Words(false, "");

        static Words wrong(String text) {
            return new Words(true, text);
        }

        static Words hint(String text) {
            return new Words(false, text);
        }
    }

    Words aboutTitle() {
        return title.isBlank() ? Words.wrong(Messages.New_noTitle) : Words.NONE;
    }

    Words aboutFolder() {
        if (folder.isBlank()) {
            return Words.wrong(Messages.New_noFolder);
        }
        Optional<Path> path = path(folder);
        if (path.isEmpty()) {
            return Words.wrong(Messages.New_noPath);
        }
        if (!path.get().isAbsolute()) {
            return Words.wrong(Messages.New_notAbsolute);
        }
        Path target = path.get().normalize();
        if (Files.isRegularFile(target)) {
            return Words.wrong(Messages.New_isFile);
        }
        Optional<Path> outer = commissionAbove(target);
        if (outer.isPresent()) {
            return Words.wrong(NLS.bind(Messages.New_insideOther, outer.get()));
        }
        if (Files.isDirectory(target)) {
            return isEmpty(target) ? place(target, Messages.New_folderThere) : Words.wrong(Messages.New_taken);
        }
        return place(target, Messages.New_folderHint);
    }

    private static Words place(Path target, String hint) {
        Path there = target;
        while (there != null && !Files.exists(there)) {
            there = there.getParent();
        }
        boolean writable = there != null && Files.isDirectory(there) && Files.isWritable(there);
        return writable ? Words.hint(hint) : Words.wrong(NLS.bind(Messages.New_notWritable, there == null ? target : there));
    }

    private static Optional<Path> commissionAbove(Path target) {
        for (Path above = target.getParent(); above != null; above = above.getParent()) {
            if (Files.isRegularFile(above.resolve(COMMISSION))) {
                return Optional.of(above);
            }
        }
        return Optional.empty();
    }

    Words aboutStudio() {
        if (!shared) {
            return Words.NONE;
        }
        if (studio.isBlank()) {
            return Words.wrong(Messages.New_noStudio);
        }
        Optional<Path> path = path(studio);
        if (path.isEmpty() || path.get().getFileName() == null) {
            return Words.wrong(Messages.New_noPath);
        }
        if (!path.get().isAbsolute()) {
            return Words.wrong(Messages.New_notAbsolute);
        }
        Path place = path.get().normalize();
        Optional<Path> target = path(folder).map(Path::normalize);
        if (target.isPresent() && (place.startsWith(target.get()) || target.get().startsWith(place)) || commissionAbove(place).isPresent()) {
            return Words.wrong(Messages.New_studioInside);
        }
        if (Files.isRegularFile(place.resolve(STUDIO))) {
            return Words.hint(Messages.New_studioJoined);
        }
        if (Files.isRegularFile(place) || Files.isDirectory(place) && !isEmpty(place)) {
            return Words.wrong(Messages.New_studioTaken);
        }
        return place(place, Messages.New_studioMade);
    }

    /** What was chosen; empty as long as something is wrong. */
    Optional<NewChoice> choice() {
        if (aboutTitle().wrong() || aboutFolder().wrong() || aboutStudio().wrong()) {
            return Optional.empty();
        }
        Optional<Path> joined = shared ? path(studio).map(Path::normalize) : Optional.empty();
        return Optional.of(new NewChoice(title.strip(), path(folder).orElseThrow().normalize(), joined, units));
    }

    private static Optional<Path> path(String typed) {
        try {
            return Optional.of(Path.of(typed.strip()));
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    private static boolean isEmpty(Path folder) {
        try (Stream<Path> entries = Files.list(folder)) {
            return entries.findAny().isEmpty();
        } catch (IOException e) {
            return false; // what cannot be looked into is not ours to fill
        }
    }
}
