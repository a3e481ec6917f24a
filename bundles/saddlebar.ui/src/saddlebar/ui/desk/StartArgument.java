package saddlebar.ui.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Which commission the person named when starting the program: the first argument that is no option. */
public final class StartArgument {
    /** The workbench's own options that a value follows. */
    private static final Set<String> WITH_VALUE = Set.of("-cssTheme", "-perspective");

    private StartArgument() {
    }

    /** @param arguments of the application, without those of the platform */
    public static Optional<Path> commission(List<String> arguments) {
        boolean valueFollows = false;
        for (String argument : arguments) {
            boolean option = argument.startsWith("-");
            if (!option && !valueFollows && !argument.isBlank()) {
                return Optional.of(Path.of(argument));
            }
            valueFollows = option && WITH_VALUE.contains(argument);
        }
        return Optional.empty();
    }
}
