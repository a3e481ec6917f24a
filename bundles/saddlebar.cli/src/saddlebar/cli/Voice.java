package saddlebar.cli;

import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;

import picocli.CommandLine;

/** The two streams of a run: answers on one, progress, warnings and refusals on the other. UTF-8 whatever the system's locale. */
public final class Voice {
    private final PrintWriter out;
    private final PrintWriter err;

    public Voice(OutputStream out, OutputStream err) {
        this(new OutputStreamWriter(out, StandardCharsets.UTF_8), new OutputStreamWriter(err, StandardCharsets.UTF_8));
    }

    public Voice(Writer out, Writer err) {
        this.out = new PrintWriter(out);
        this.err = new PrintWriter(err);
    }

    /** For what the parser says by itself: help and version. */
    void lendTo(CommandLine line) {
        line.setOut(out);
        line.setErr(err);
    }

    void answer(String line) {
        out.println(line);
        out.flush();
    }

    void tell(String line) {
        err.println(line);
        err.flush();
    }

    /** Without an end of line: a moving bar. */
    void draw(String text) {
        err.print(text);
        err.flush();
    }
}
