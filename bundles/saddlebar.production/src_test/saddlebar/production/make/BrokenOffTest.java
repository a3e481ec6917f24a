package saddlebar.production.make;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import saddlebar.artwork.ArtworkReaders;
import saddlebar.model.problem.Problem;
import saddlebar.model.work.Work;
import saddlebar.production.check.Checking;
import saddlebar.stencil.ScreeningMethods;
import saddlebar.stencil.process.StencilProcesses;

/** Making that is stopped or fails: every file is whole or absent, and the next making ends the work. */
class BrokenOffTest {
    @TempDir
    Path temp;
    private WorkBench bench;

    @BeforeEach
    void layOut() throws IOException {
        bench = new WorkBench(temp);
        bench.bring("W01", WorkBench.twoPieces());
    }

    /** Stops at the n-th time it is asked. */
    private static Work stopsAt(int checkpoint) {
        AtomicInteger left = new AtomicInteger(checkpoint);
        return new Work() {
            @Override
            public void advance(long units) {
                // nobody watches
            }

            @Override
            public void checkpoint() {
                if (left.decrementAndGet() <= 0) {
                    throw new CancellationException("stopped by the test");
                }
            }
        };
    }

    private static int checkpointsOf(WorkBench bench) throws IOException {
        AtomicInteger asked = new AtomicInteger();
        bench.make(new MakeRequest(List.of(), Stage.CARDS, true, 2), new Work() {
            @Override
            public void advance(long units) {
                // nobody watches
            }

            @Override
            public void checkpoint() {
                asked.incrementAndGet();
            }
        });
        return asked.get();
    }

    private void deleteMade() throws IOException {
        try (Stream<Path> all = Files.walk(bench.made(""))) {
            for (Path file : all.sorted(java.util.Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }

    @Test
    void stoppedAnywhereNothingIsHalfWrittenAndTheNextMakingEndsIt() throws IOException {
        int asked = checkpointsOf(bench);
        Map<String, String> whole = bench.hashes();
        assertTrue(asked > 100, "asked " + asked + " times");
        boolean someKept = false;
        for (int i = 1; i <= 6; i++) {
            deleteMade();
            int at = Math.max(1, asked * i / 7);
            assertThrows(CancellationException.class, () -> bench.make(new MakeRequest(List.of(), Stage.CARDS, false, 2), stopsAt(at)));
            assertEquals(List.of(), bench.halfWritten());
            Map<String, String> left = bench.hashes();
            left.forEach((file, hash) -> assertEquals(whole.get(file), hash, file + " after a stop"));
            MakeResult rest = bench.make();
            someKept |= rest.kept() > 0;
            assertEquals(whole, bench.hashes(), "stopped at " + at + " of " + asked);
        }
        assertTrue(someKept, "what was finished before the stop is not made again");
    }

    @Test
    void madeMayBeDeletedAtAnyTime() throws IOException {
        bench.make();
        Map<String, String> whole = bench.hashes();
        deleteMade();
        bench.make();
        assertEquals(whole, bench.hashes());
    }

    @Test
    void aFileThatWasSpoiltOrTakenAwayIsMadeAgainAndNothingElse() throws IOException {
        bench.make();
        Map<String, String> whole = bench.hashes();
        Files.delete(bench.made("stencils/W01-trace-1.tif"));
        Files.writeString(bench.made("cards/W01-cutting-list.csv"), "spoilt");
        List<String> again = bench.make().made().stream().map(MadeThing::file).toList();
        assertEquals(whole, bench.hashes());
        assertEquals(List.of("made/stencils/W01-trace-1.tif", "made/cards/W01-cutting-list.csv"), again);
    }

    @Test
    void anIndexThatCannotBeReadCountsAsAbsent() throws IOException {
        bench.make();
        Map<String, String> whole = bench.hashes();
        Files.writeString(bench.made(MadeIndex.FILE), "{\"stencils/W01-trace-1.tif\": {\"key\"");
        bench.make();
        assertEquals(whole, bench.hashes());
    }

    @Test
    void noPlaceForMadeThings() throws IOException {
        Files.writeString(bench.folder.resolve(Making.FOLDER), "a file where the folder should be");
        Map<String, byte[]> before = modelFiles();
        assertThrows(IOException.class, bench::make);
        assertEquals(before.keySet(), modelFiles().keySet());
        for (Map.Entry<String, byte[]> file : modelFiles().entrySet()) {
            assertEquals(-1, java.util.Arrays.mismatch(before.get(file.getKey()), file.getValue()), file.getKey());
        }
        Files.delete(bench.folder.resolve(Making.FOLDER));
        bench.make();
        assertFalse(bench.hashes().isEmpty());
    }

    private Map<String, byte[]> modelFiles() throws IOException {
        Map<String, byte[]> files = new java.util.TreeMap<>();
        try (Stream<Path> all = Files.walk(bench.folder)) {
            for (Path file : all.filter(file -> file.toString().endsWith(".saddlebar") || file.toString().endsWith(".jsonl")).toList()) {
                files.put(bench.folder.relativize(file).toString(), Files.readAllBytes(file));
            }
        }
        return files;
    }

    /** A real full disk; only where the test may mount one. */
    @Test
    void aFullDisk() throws IOException, InterruptedException {
        bench.make();
        Map<String, String> whole = bench.hashes();
        deleteMade();
        Path made = Files.createDirectories(bench.made(""));
        assumeTrue(run("mount", "-t", "tmpfs", "-o", "size=100k", "tmpfs", made.toString()) == 0, "may not mount a small disk");
        try {
            IOException full = assertThrows(IOException.class, bench::make);
            assertTrue(full.toString().contains("space"), full.toString());
            assertEquals(List.of(), bench.halfWritten());
            bench.hashes().forEach((file, hash) -> assertEquals(whole.get(file), hash, file + " on a full disk"));
        } finally {
            assertEquals(0, run("umount", made.toString()));
        }
        bench.make();
        assertEquals(whole, bench.hashes());
    }

    private static int run(String... words) throws InterruptedException {
        try {
            return new ProcessBuilder(words).redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD).start().waitFor();
        } catch (IOException noSuchProgram) {
            return -1;
        }
    }

    @Test
    void recordsThatWereChangedAreToldAndMakingGoesOn() throws IOException {
        bench.make();
        Path records;
        try (Stream<Path> files = Files.list(bench.folder.resolve("records"))) {
            records = files.findFirst().orElseThrow();
        }
        List<String> lines = Files.readAllLines(records);
        lines.set(0, lines.get(0).replace("\"kind\":\"pieces\"", "\"kind\":\"remake\""));
        Files.writeString(records, String.join("\n", lines) + "\n");
        Making making = new Making(ArtworkReaders.ownReaders(), ScreeningMethods.ownMethods(), StencilProcesses.ownProcesses());
        List<Problem> problems = new ArrayList<>();
        bench.look(open -> problems.addAll(new Checking(making, ScreeningMethods.ownMethods()).check(open, Work.UNWATCHED)));
        Problem broken = problems.stream().filter(problem -> problem.code().equals("broken-chain")).findFirst().orElseThrow();
        assertTrue(broken.where().contains(records.getFileName() + ":2") || broken.message().contains(records.getFileName() + ":2"), broken.toString());
        bench.make(new MakeRequest(List.of(), Stage.CARDS, true, 2), Work.UNWATCHED);
        assertTrue(Files.readAllLines(records).size() >= lines.size());
    }
}
