package saddlebar.trace.prov;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import saddlebar.model.problem.Refusal;
import saddlebar.model.store.RecordDraft;
import saddlebar.model.store.RecordLine;

/** Valid by a schema and a validator that nobody here wrote the judgment of, and the same when it comes in again. */
class ProvJsonTest {
    private static final Path FOLDER = Path.of("src_test/saddlebar/trace/prov");
    /** The system's own, to which its packages belong. */
    private static final String PYTHON = "/usr/bin/python3";
    private final JsonSchema schema = schema();
    @TempDir
    private Path temp;

    private static JsonSchema schema() {
        try {
            return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V4).getSchema(Files.readString(FOLDER.resolve("prov-json-2013.schema.json")));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static RecordLine line(String id, String kind, String who, List<String> used, List<String> made, Map<String, Object> settings,
            List<String> supersedes,
            String note) {
        Instant time = Instant.parse("2026-03-14T16:20:05.250Z");
        return new RecordLine(id, time, time.plusSeconds(60), kind, who, "anna-desk", used, made, settings, supersedes, note, "0".repeat(64), "1".repeat(64),
                "f", 1,
                0);
    }

    private static String written(List<RecordLine> lines, boolean derivations) throws IOException {
        ProvWriter writer = new ProvWriter(derivations);
        lines.forEach(writer::take);
        StringWriter text = new StringWriter();
        writer.write(text);
        return text.toString();
    }

    private Set<ValidationMessage> faults(String document) {
        return schema.validate(document, InputFormat.JSON, context -> context.getExecutionConfig().setFormatAssertionsEnabled(true));
    }

    private static List<RecordDraft> read(String text) {
        return ProvReader.read("x.json", text).stream().map(ProvReader.Told::draft).toList();
    }

    private static RecordDraft draft(RecordLine line) {
        return new RecordDraft(Optional.of(line.id()), Optional.of(line.time()), line.kind(), Optional.of(line.who()), line.used(), line.made(),
                line.settings(),
                line.supersedes(), line.note());
    }

    private static List<RecordLine> some() {
        Map<String, Object> settings = new LinkedHashMap<>();
        settings.put("window", "W01");
        settings.put("piece", "12");
        settings.put("pieceId", "p 12/ä");
        settings.put("layerId", "l1");
        settings.put("mix", "M07 thin & pale");
        settings.put("humidity", 0.55);
        settings.put("pulls", 40L);
        settings.put("whole", 40.0);
        settings.put("money", new BigDecimal("12345678901234567890.123456789012345678901"));
        settings.put("dry", true);
        settings.put("nothing", null);
        settings.put("list", Arrays.asList("a", 1L, null, Map.of("b", List.of(2.5))));
        settings.put("a name: with/blanks", "a \"value\" with $ and \u2028 and \ud83d\udd25");
        return List.of(line("m7", "mix", "Anna Öst", List.of("lot-1"), List.of("mix-7"), Map.of("mix", "M07 thin & pale"), List.of(), ""),
                line("d1", "pull", "Anna Öst", List.of("p12"), List.of("x"), settings, List.of(), "a little stiff\nsecond line"),
                line("d2", "pull", "", List.of(), List.of(), Map.of(), List.of("d1"), ""));
    }

    @Test
    void validByTheSubmissionsRules() throws IOException {
        assertEquals(Set.of(), faults(written(some(), true)));
        assertEquals(Set.of(), faults(written(List.of(), true)));
    }

    @Test
    void theRulesAreNotToothless() throws IOException {
        String good = written(some(), true);
        for (String bad : List.of(good.replace("\"prov:entity\"", "\"prov:thing\""), good.replace("\"wasGeneratedBy\"", "\"wasMadeBy\""),
                good.replace("\"prov:startTime\": \"2026", "\"prov:startTime\": \"on a day of 2026"), good.replace("\"$\"", "\"value\""))) {
            assertTrue(!bad.equals(good) && !faults(bad).isEmpty());
        }
    }

    @Test
    void relationsAreThoseOfProv() throws IOException {
        String text = written(some(), true);
        assertTrue(text.contains("thing:mix/M07%20thin%20%26%20pale"), text);
        assertTrue(text.contains("\"prov:generatedEntity\": \"thing:print/p%2012/%C3%A4/l1\""), text);
        assertTrue(text.contains("\"prov:informant\": \"record:d1\""));
    }

    @Test
    void comesInAgainAsItWentOut() throws IOException {
        assertEquals(some().stream().map(ProvJsonTest::draft).toList(), read(written(some(), true)));
        assertEquals("anna-desk", ProvReader.read("x", written(some(), false)).get(0).writer());
    }

    @Test
    void whatIsNoRecordIsRefusedWithItsPlace() {
        assertTrue(assertThrows(Refusal.class, () -> ProvReader.read("x.json", "{")).getMessage().contains("x.json"));
        assertThrows(Refusal.class, () -> ProvReader.read("x.json", "[]"));
        assertThrows(Refusal.class, () -> ProvReader.read("x.json", "{\"activity\":{}}"));
        String text = "{\"prefix\":{\"sb\":\"urn:saddlebar:prov:1#\"},\"activity\":{\"record:a\":{\"sb:kind\":\"mix\",\"prov:startTime\":\"yesterday\"}}}";
        assertTrue(assertThrows(Refusal.class, () -> ProvReader.read("x.json", text)).getMessage().contains("record:a"));
    }

    @Property(tries = 100)
    void anyRecordComesInAgain(@ForAll("lines") RecordLine line) throws IOException {
        String text = written(List.of(line), true);
        assertEquals(List.of(draft(line)), read(text));
        assertEquals(Set.of(), faults(text));
    }

    @Provide
    Arbitrary<RecordLine> lines() {
        Arbitrary<String> words = Arbitraries.strings().ofMinLength(1).ofMaxLength(12).filter(word -> !word.isBlank()
                && word.codePoints().noneMatch(c -> c >= 0xD800 && c <= 0xDFFF)); // a lone half of a pair is no text
        Arbitrary<Object> values = Arbitraries.oneOf(words.map(Object.class::cast), Arbitraries.longs().map(Object.class::cast),
                Arbitraries.doubles().filter(number -> Double.doubleToRawLongBits(number) != Long.MIN_VALUE).map(Object.class::cast),
                Arbitraries.of(true, false).map(Object.class::cast), words.list().ofMaxSize(3).map(Object.class::cast));
        Arbitrary<String> keys = Arbitraries.oneOf(words, Arbitraries.of("mix", "screen", "pieceId", "layerId", "sheet", "artworkSha256"));
        return Combinators.combine(words, Arbitraries.of("pull", "mix", "fire", "defect", "glaze", "cost"), words, words.list().ofMaxSize(2),
                Arbitraries.maps(keys, values).ofMaxSize(5), words.list().ofMaxSize(1), words)
                .as((id, kind, who, used, settings, supersedes, note) -> line(id, kind, who, used, List.of(), settings, supersedes, note));
    }

    /** The Debian package python3-prov, a reader of the submission's own authors, where it is installed. */
    @Test
    void anotherProgramReadsTheSame() throws IOException, InterruptedException {
        assumeTrue(runs("import prov.model"), "python3-prov is not installed");
        Path file = temp.resolve("record.json");
        Files.writeString(file, written(some(), true));
        Process python = new ProcessBuilder(PYTHON, "-c", "import prov.model,sys; d=prov.model.ProvDocument.deserialize(sys.argv[1]);"
                + "print(len(list(d.get_records(prov.model.ProvActivity))), len(list(d.get_records(prov.model.ProvUsage))),"
                + "len(list(d.get_records(prov.model.ProvGeneration))))", file.toString()).redirectErrorStream(true).start();
        String told = new String(python.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
        assertEquals(0, python.waitFor(), told);
        List<String> counts = new ArrayList<>(List.of(told.split(" ")));
        assertEquals("3", counts.get(0), told);
        assertEquals(written(some(), true).split("\"_:used/", -1).length - 1, Integer.parseInt(counts.get(1)));
        assertEquals(written(some(), true).split("\"_:wasGeneratedBy/", -1).length - 1, Integer.parseInt(counts.get(2)));
    }

    private static boolean runs(String program) throws InterruptedException {
        try {
            return new ProcessBuilder(PYTHON, "-c", program).redirectErrorStream(true).start().waitFor() == 0;
        } catch (IOException e) {
            return false;
        }
    }
}
