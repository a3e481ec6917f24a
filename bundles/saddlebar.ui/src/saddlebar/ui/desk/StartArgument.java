package saddlebar.ui.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Which commission the person named when starting the program: the first argument that is no option. */
public final class StartArgument {
    private StartArgument() {
    }

    /** @param arguments of the application, without those of the platform */
    public static Optional<Path> commission(List<String> arguments) {
        return arguments.stream().filter(argument -> !argument.isBlank() && !argument.startsWith("-")).findFirst().map(Path::of);
    }
}
