package saddlebar.model.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.problem.Problem;

/** The page docs/file-format.md says what the program does: its examples are what the program writes, its tables what the program knows. */
class FileFormatPageTest {
    private static final Path PAGE = Path.of("../../docs/file-format.md");

    @TempDir
    Path temp;
    private String page;

    @BeforeEach
    void readPage() throws IOException {
        page = Files.readString(PAGE);
    }

    private static String only(List<MatchResult> found, String what) {
        assertEquals(1, found.size(), "the page shows " + found.size() + " times: " + what);
        return found.get(0).group(1);
    }

    private static List<MatchResult> all(String text, String pattern) {
        return Pattern.compile(pattern, Pattern.MULTILINE).matcher(text).results().toList();
    }

    private String fence(String language) {
        return only(all(page, "^```" + language + "\\n((?:(?!```).*\\n)*)```$"), "a block of " + (language.isEmpty() ? "plain text" : language));
    }

    /** The text from a heading to the next. */
    private String section(String heading) {
        return only(all(page, "^#+ " + Pattern.quote(heading) + "\\n((?:(?!#).*\\n)*)"), heading);
    }

    /** Words set as code, those in blocks left out. */
    private static List<String> codes(String text) {
        return all(text.replaceAll("(?s)```.*?```", ""), "`([^`]+)`").stream().map(code -> code.group(1)).toList();
    }

    private static CommissionFolder created(Path place, Desk desk) throws IOException {
        CommissionFolder made = CommissionFolder.create(place, NewCommission.titled("Chapel").onPapers(List.of("a4")), desk);
        made.addWindow("W01", "West");
        made.commission().setGapMm(1.0);
        made.save();
        return made;
    }

    /** Ids by the kind of file that they name, in the order commission, window, studio. */
    private static List<String> ids(String commissionFile) {
        return List.of(only(all(commissionFile, "\\bid=\"([^\"]+)\" formatVersion"), "id"),
                only(all(commissionFile, "<windows href=\"windows/W01.saddlebar#([^\"]+)\""), "window"),
                only(all(commissionFile, "<studio href=\"studio/studio.saddlebar#([^\"]+)\""), "studio"));
    }

    private static void replaceIds(Path file, List<String> from, List<String> to) throws IOException {
        String text = Files.readString(file);
        for (int i = 0; i < from.size(); i++) {
            text = text.replace(from.get(i), to.get(i));
        }
        Files.writeString(file, text);
    }

    @Test
    void theModelFileIsWhatIsWrittenAndIsRead() throws IOException {
        String example = fence("xml");
        Path place = temp.resolve("chapel");
        created(place, Desk.ofAnna()).close();
        Path file = place.resolve("commission.saddlebar");
        List<String> written = ids(Files.readString(file));
        List<String> shown = ids(example);
        for (String name : List.of("commission.saddlebar", "windows/W01.saddlebar", "studio/studio.saddlebar")) {
            replaceIds(place.resolve(name), written, shown);
        }
        assertEquals(Files.readString(file).strip(), "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + example.strip());
        try (CommissionFolder read = CommissionFolder.open(place, Access.READ)) {
            assertEquals(shown, List.of(read.commission().getId(), read.window("W01").orElseThrow().getId(), read.studio().getId()));
            assertEquals(List.of(), read.links().broken());
        }
    }

    @Test
    void theFoldersAreThoseOfANewCommission() throws IOException {
        String tree = fence("");
        Set<String> shown = all(tree, "^  (\\S.*?)(?:   +|$)").stream().flatMap(line -> Arrays.stream(line.group(1).split("\\s+")))
                .map(name -> name.replaceFirst("/.*", "")).filter(name -> !name.equals("\u2026")).collect(Collectors.toCollection(TreeSet::new));
        Path place = temp.resolve("tree");
        try (CommissionFolder made = created(place, Desk.ofAnna())) {
            made.commission().setTitle("Chapel door");
            made.studio().setName("Ours");
            made.save();
            made.records().append(RecordDraft.of(RecordKind.NOTE));
            Set<String> there = new TreeSet<>(CommissionFolderTest.names(place));
            there.addAll(CommissionFolderTest.names(place.resolve("studio")));
            there.addAll(List.of(".save", ".unsaved", "made", "logs")); // the first two are gone after a save, made comes with making, logs with the first log
            assertEquals(there, shown);
            assertTrue(Files.exists(place.resolve(only(all(tree, "^  (records/\\S+\\.jsonl)"), "a file of records"))), "the name of a file of records");
        }
    }

    @Test
    void theRecordsAreWhatIsWritten() throws IOException {
        List<String> lines = fence("jsonl").lines().toList();
        assertEquals(2, lines.size());
        Desk desk = Desk.ofAnna();
        Path place = temp.resolve("records");
        try (CommissionFolder made = CommissionFolder.create(place, NewCommission.titled("t"), desk)) {
            for (String line : lines) {
                RecordLine shown = RecordLine.parse(line, "", "", 1, 0);
                desk.clock(shown.written().toString());
                RecordKind kind = RecordKind.ofKey(shown.kind()).orElseThrow();
                shown.settings().keySet().forEach(name -> assertNotNull(kind.eClass().getEStructuralFeature(name), kind.key() + " has no " + name));
                made.records().append(RecordDraft.of(kind).withId(shown.id()).at(shown.time()).by(shown.who()).using(shown.used()).making(shown.made())
                        .with(shown.settings()).superseding(shown.supersedes()).noting(shown.note()));
            }
        }
        assertEquals(lines, Files.readAllLines(place.resolve("records/2026-03.anna-north-desk.jsonl")));
    }

    @Test
    void theTableOfRecordsNamesEveryKeyAndEveryKind() throws IOException {
        List<MatchResult> rows = all(section("Records"), "^\\| (`.*) \\| (.*) \\|$");
        Set<String> keys = new TreeSet<>();
        rows.forEach(row -> keys.addAll(codes(row.group(1))));
        rows.stream().filter(row -> !row.group(1).equals("`kind`")).forEach(row -> keys.addAll(codes(row.group(2))));
        Map<?, ?> full = (Map<?, ?>) Json.read(RecordLine.text("id", Instant.EPOCH, "w", RecordLine.NO_PREV,
                RecordDraft.of(RecordKind.NOTE).superseding(List.of("old")).noting("n"), "who"));
        assertEquals(full.keySet().stream().map(String.class::cast).collect(Collectors.toCollection(TreeSet::new)), keys);
        String kinds = rows.stream().filter(row -> row.group(1).equals("`kind`")).map(row -> row.group(2)).findFirst().orElseThrow();
        assertEquals("`" + Arrays.stream(RecordKind.values()).map(RecordKind::key).collect(Collectors.joining(" ")) + "`", kinds);
    }

    @Test
    void theProblemsOfReadingAreThoseThatAreTold() throws IOException {
        Path place = temp.resolve("damaged");
        try (CommissionFolder made = CommissionFolder.create(place, NewCommission.titled("t"), Desk.ofAnna())) {
            made.records().append(List.of(RecordDraft.of(RecordKind.NOTE), RecordDraft.of(RecordKind.NOTE)));
            Path file = place.resolve("records/2026-03.anna-north-desk.jsonl");
            List<String> lines = Files.readAllLines(file);
            Files.writeString(file, lines.get(0).replace("note", "cost") + "\n" + lines.get(1) + "\nno record\n{\"torn");
            Files.copy(file, place.resolve("records/2026-03.anna-north-desk (copy).jsonl"));
            try (RecordReading reading = made.records().read()) {
                reading.toList();
                Set<String> told = reading.problems().stream().map(Problem::code).collect(Collectors.toCollection(TreeSet::new));
                Set<String> shown = codes(section("Records")).stream().filter(code -> code.matches("[a-z]+(-[a-z]+)+"))
                        .collect(Collectors.toCollection(TreeSet::new));
                assertEquals(told, shown);
            }
        }
    }

    @Test
    void theLockIsWhatIsWritten() throws IOException {
        String shown = only(all(section("Locks"), "`(\\{.*\\})`"), "the words of a lock");
        Desk desk = Desk.ofAnna();
        desk.clock(String.valueOf(((Map<?, ?>) Json.read(shown)).get("since")));
        Path place = temp.resolve("lock");
        try (CommissionFolder held = CommissionFolder.create(place, NewCommission.titled("t"), desk)) {
            assertTrue(held.hasOwnStudio());
            String words = Files.readString(place.resolve(".lock")).strip();
            assertEquals(words, shown.replaceFirst("\"pid\":\\d+", Matcher.quoteReplacement("\"pid\":" + desk.pid())));
        }
    }

    @Test
    void theVersionsAreAllThatThereWere() {
        List<String> versions = all(section("Format versions"), "^\\| (\\d+) \\|").stream().map(row -> row.group(1)).toList();
        List<String> known = new ArrayList<>();
        for (int version = Formats.current().version(); version >= 0; version--) {
            known.add(String.valueOf(version));
        }
        assertEquals(known, versions);
        assertTrue(section("Model files").contains("`" + CommissionPackage.eNS_URI + "`"), "the page names another package");
    }

    @Test
    void theNamesOfAttributesAreThoseOfTheModel() {
        Set<String> model = CommissionPackage.eINSTANCE.getEClassifiers().stream().filter(EClass.class::isInstance).map(EClass.class::cast)
                .flatMap(eClass -> eClass.getEStructuralFeatures().stream()).map(feature -> feature.getName()).collect(Collectors.toSet());
        String conventions = section("Model files");
        List<String> shown = codes(conventions).stream().filter(code -> code.matches("[a-z]+(?:[A-Z]+[a-z]*)?")).toList();
        assertTrue(shown.containsAll(List.of("widthMm", "face")), shown.toString());
        assertEquals(List.of(), shown.stream().filter(name -> !model.contains(name)).toList());
    }

    @Test
    void aRegionIsWrittenAsShown() {
        String shown = only(all(section("Model files"), "`(POLYGON .*?)`"), "a region");
        Object region = EcoreUtil.createFromString(CommissionPackage.Literals.OUTLINE, shown);
        assertEquals(shown, EcoreUtil.convertToString(CommissionPackage.Literals.OUTLINE, region));
    }

    @Test
    void asManyGenerationsAreKeptAsThePageSays() throws IOException {
        String name = only(all(section("Saving"), "\\(`(windows/W01\\.\\d+\\.saddlebar)`; five are kept\\)"), "the name of a generation");
        Path place = temp.resolve("generations");
        try (CommissionFolder made = created(place, Desk.ofAnna())) {
            for (int i = 0; i < 12; i++) {
                made.window("W01").orElseThrow().setTitle("title " + i);
                made.save();
            }
            assertEquals(5, made.generations("windows/W01.saddlebar").size());
            try (Stream<Path> kept = Files.walk(place.resolve(".generations"))) {
                assertTrue(kept.anyMatch(path -> path.endsWith(name)), name);
            }
        }
    }
}
