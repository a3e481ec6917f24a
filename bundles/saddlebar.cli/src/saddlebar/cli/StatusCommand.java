package saddlebar.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.ServiceScope;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import saddlebar.model.store.Access;
import saddlebar.model.store.CommissionFolder;
import saddlebar.production.check.CommissionStatus;
import saddlebar.production.check.CommissionStatus.LayerStatus;
import saddlebar.production.check.CommissionStatus.WindowStatus;

/** Where everything stands. */
@Component(service = BenchCommand.class, scope = ServiceScope.PROTOTYPE)
@Command(name = "status", sortOptions = false, description = "Tells where each window, layer and piece stands, and what can be done next.",
        footer = {"", "Example: saddlebar status demo-projects/first-panel"})
public final class StatusCommand implements BenchCommand {
    @Parameters(index = "0", paramLabel = "C", description = "Folder of the commission.")
    private Path folder;

    @Mixin
    private CommonOptions common;

    @Override
    public Integer call() throws IOException {
        try (CommissionFolder commission = CommissionFolder.open(folder, Access.READ)) {
            CommissionStatus status = CommissionStatus.of(commission);
            common.answer(status, words(status));
            return DONE;
        }
    }

    private static List<String> words(CommissionStatus status) {
        List<String> words = new ArrayList<>();
        words.add(status.title());
        for (WindowStatus window : status.windows()) {
            words.add(String.format(Locale.ROOT, "%s  %s: %d pieces, %s", window.name(), window.title(), window.pieces().size(), window.state()));
            for (LayerStatus layer : window.layers()) {
                words.add(String.format(Locale.ROOT, "    %-12s %s, %d stencils, %d prints", layer.name(), layer.state(), layer.stencils(), layer.prints()));
            }
        }
        if (!status.next().isEmpty()) {
            words.add("Next:");
            status.next().forEach(step -> words.add("  " + step));
        }
        return words;
    }
}
