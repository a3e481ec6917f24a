package saddlebar.cli;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

import saddlebar.artwork.ArtworkReaders;
import saddlebar.model.store.StudioLibrary;
import saddlebar.production.bring.Bringing;
import saddlebar.production.check.Checking;
import saddlebar.production.document.ReportWriting;
import saddlebar.production.make.FullSizePrinting;
import saddlebar.production.make.Making;
import saddlebar.report.document.Reports;
import saddlebar.stencil.ScreeningMethods;
import saddlebar.stencil.process.StencilProcesses;

/** All commands over the product's own parts, without a platform: what a user types in a folder, and what comes of it. */
final class CommandBench {
    private final Path folder;
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();
    private StopSign stop = new StopSign();

    CommandBench(Path folder) {
        this.folder = folder;
        System.setProperty(StudioLibrary.PROPERTY, Path.of("../../shared").toAbsolutePath().normalize().toString());
    }

    /** One command in a Java of its own: the folder, then the words. */
    public static void main(String[] folderAndLine) {
        CommandBench bench = new CommandBench(Path.of(folderAndLine[0]));
        int code = bench.run(folderAndLine[1]);
        System.err.println(bench.told());
        System.exit(code);
    }

    private static List<BenchCommand> commands() {
        ArtworkReaders readers = ArtworkReaders.ownReaders();
        ScreeningMethods methods = ScreeningMethods.ownMethods();
        StencilProcesses processes = StencilProcesses.ownProcesses();
        Making making = new Making(readers, methods, processes);
        return List.of(new PiecesCommand(readers), new ScreenCommand(readers, methods, processes), new GangCommand(readers),
                new BringCommand(new Bringing(readers, making)), new MakeCommand(making), new CheckCommand(new Checking(making, methods)),
                new StatusCommand(), new NewCommand(), new MeshCommand(methods), new WedgeCommand(methods, processes),
                new ToneCommand(readers, methods, processes), new PrinterCommand(readers, methods), new FireCommand(), new KilnCommand(),
                new ColourCommand(), new ColourwayCommand(), new RecipeCommand(), new MendCommand(making), new NumberCommand(), new MarkCommand(),
                new OpeningCommand(), new JoinCommand(), new ExposedCommand(), new RecordCommand(),
                new SuspectsCommand(), new TraceCommand(readers), new ProvCommand(), new RackCommand(), new RemakeCommand(), new StudioCommand(),
                new StockCommand(), new FullSizeCommand(new FullSizePrinting(readers)),
                new ReportCommand(new ReportWriting(readers, List.of(), Reports.own())));
    }

    /** @param line words between blanks; {@code @name} is a file of the folder */
    int run(String line) {
        out.getBuffer().setLength(0);
        err.getBuffer().setLength(0);
        List<String> words = new ArrayList<>();
        for (String word : line.strip().split(" +")) {
            words.add(word.startsWith("@") ? at(word.substring(1)).toString() : word);
        }
        if (words.size() > 1) {
            words.add("--progress");
            words.add("none");
        }
        return new Launcher(commands(), "1", new Voice(out, err), stop).run(words.toArray(String[]::new));
    }

    /** From now on every command is stopped at once. */
    void stopped() {
        stop = new StopSign();
        stop.raise();
    }

    Path at(String name) {
        return folder.resolve(name);
    }

    Path file(String name, String text) throws IOException {
        return Files.writeString(at(name), text, StandardCharsets.UTF_8);
    }

    /** A drawing 50 mm wide and high. */
    Path svg(String name, String content) throws IOException {
        return file(name, "<svg xmlns='http://www.w3.org/2000/svg' width='50mm' height='50mm' viewBox='0 0 50 50'>\n" + content + "</svg>");
    }

    String told() {
        return err.toString().strip();
    }

    String answered() {
        return out.toString();
    }

    JsonObject json() {
        return JsonParser.parseString(out.toString()).getAsJsonObject();
    }
}
