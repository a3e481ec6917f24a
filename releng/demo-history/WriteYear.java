import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * Writes an invented year of printing as two notebooks: in one, three things were wrong (a slack frame, a mix too thin, a cold corner of the kiln), in the
 * other nothing was. Same seed, same bytes. Run: java releng/demo-history/WriteYear.java demo-projects/year-of-prints
 */
public final class WriteYear {
    private static final String[] PEOPLE = {"Ines", "Marlo", "Tove"};
    private static final String[] PLACES = {"back left", "back middle", "back right", "middle left", "middle", "middle right", "front left", "front middle",
        "front right"};
    private static final double USUAL = 0.02;

    private final Random random;
    private final boolean wrong;
    private final List<String> rows = new ArrayList<>();

    private WriteYear(long seed, boolean wrong) {
        this.random = new Random(seed);
        this.wrong = wrong;
    }

    public static void main(String[] args) throws IOException {
        Path out = Path.of(args[0]);
        Files.createDirectories(out);
        Files.writeString(out.resolve("notebook.csv"), new WriteYear(20260329, true).year(), StandardCharsets.UTF_8);
        Files.writeString(out.resolve("notebook-nothing-wrong.csv"), new WriteYear(20260929, false).year(), StandardCharsets.UTF_8);
    }

    private String year() {
        rows.add("when,kind,who,window,piece,layer,screen,mesh,paint,mix,pull,firing,shelf_place,peak_c,humidity,defect,severity");
        LocalDate day = LocalDate.of(2025, 4, 1);
        int mix = 0;
        int firing = 0;
        for (int window = 1; window <= 8; window++) {
            for (String layer : new String[] {"trace", "matt"}) {
                int piece = 1;
                while (piece <= 60) {
                    mix++;
                    String screen = String.format(Locale.ROOT, "S%02d", 1 + random.nextInt(12));
                    int pull = 0;
                    String who = PEOPLE[random.nextInt(PEOPLE.length)];
                    double humidity = 0.35 + 0.3 * random.nextDouble();
                    for (int in = 0; in < 12 && piece <= 60; in++, piece++) {
                        if (random.nextInt(4) == 0) {
                            screen = String.format(Locale.ROOT, "S%02d", 1 + random.nextInt(12));
                        }
                        pull++;
                        if (piece % 15 == 1) {
                            firing++;
                        }
                        unit(day, who, window, piece, layer, screen, mix, pull, firing + random.nextInt(2), humidity);
                    }
                    day = day.plusDays(1 + random.nextInt(3));
                }
            }
        }
        return String.join("\r\n", rows) + "\r\n";
    }

    private void unit(LocalDate day, String who, int window, int piece, String layer, String screen, int mix, int pull, int firing, double humidity) {
        String place = PLACES[random.nextInt(PLACES.length)];
        double peakC = 655 + 4 * random.nextGaussian() - (wrong && place.equals("back left") ? 14 : 0);
        String mixName = String.format(Locale.ROOT, "M%03d", mix);
        String at = String.format(Locale.ROOT, "W%02d,%d,%s", window, piece, layer);
        rows.add(String.format(Locale.ROOT, "%sT10:00,pull,%s,%s,%s,220-48,%s,%s,%d,,,,%.2f,,", day, who, at, screen, layer.equals("trace")
                ? "trace black"
                : "pale matt", mixName, pull, humidity));
        rows.add(String.format(Locale.ROOT, "%sT20:00,fire,%s,%s,,,,,,F%03d,%s,%.0f,,,", day.plusDays(1), PEOPLE[0], at, firing, place, peakC));
        String defect = "";
        if (random.nextDouble() < USUAL) {
            defect = random.nextBoolean() ? "dirt" : "smear";
        }
        if (wrong && screen.equals("S07") && random.nextDouble() < 0.35) {
            defect = "out of register";
        }
        if (wrong && mix == 41 && random.nextDouble() < 0.8) {
            defect = "thin";
        }
        if (wrong && place.equals("back left") && random.nextDouble() < 0.3) {
            defect = "matt rubs off";
        }
        if (!defect.isEmpty()) {
            rows.add(String.format(Locale.ROOT, "%s,defect,%s,%s,,,,,,,,,,%s,%s", day.plusDays(2 + random.nextInt(5)), PEOPLE[random.nextInt(3)], at, defect,
                    random.nextInt(3) == 0 ? "heavy" : "light"));
        }
    }
}
