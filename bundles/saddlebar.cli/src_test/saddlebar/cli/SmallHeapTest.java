package saddlebar.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A stencil is screened in bands: a tabloid page of gradients at 500 dpi, 47 million px, goes through a heap that is smaller than its gray values at a
 * byte each.
 */
class SmallHeapTest {
    private static final String GRADIENTS = """
            <svg xmlns="http://www.w3.org/2000/svg" width="279.4mm" height="431.8mm" viewBox="0 0 279.4 431.8">
              <defs><linearGradient id="a"><stop offset="0" stop-color="#fff"/><stop offset="1" stop-color="#111"/></linearGradient>
              <radialGradient id="b"><stop offset="0" stop-color="#000"/><stop offset="1" stop-color="#eee"/></radialGradient></defs>
              <g id="matt"><rect width="279.4" height="431.8" fill="url(#a)"/><circle cx="140" cy="200" r="120" fill="url(#b)" opacity=".7"/></g>
            </svg>
            """;

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"am", "diffusion"})
    void screensAPageLargerThanTheHeap(String method) throws IOException, InterruptedException {
        CommandBench bench = new CommandBench(folder);
        bench.file("page.svg", GRADIENTS);
        String classes = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
        Process child = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-Xmx40m", "-XX:+UseSerialGC",
                "-Djava.awt.headless=true", "-cp", classes, CommandBench.class.getName(), folder.toString(),
                "screen @page.svg --dpi 500 --jobs 2 --method " + method + " --out @page.tif").redirectErrorStream(true).start();
        String told = new String(child.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, child.waitFor(), told);
    }
}
