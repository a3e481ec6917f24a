import java.util.function.Supplier;

/** The drawings and where they are kept below the folder of the demonstration commissions. */
enum Drawing {
    EBB_TIDE("estuary-reading-room/art/W01-ebb-tide.svg", EbbTide::draw),
    READING_HERON("estuary-reading-room/art/W02-reading-heron.svg", ReadingHeron::draw),
    MOON_AND_EELGRASS("estuary-reading-room/art/W03-moon-and-eelgrass.svg", MoonAndEelgrass::draw),
    FIRST_PANEL("first-panel/art/first-panel.svg", FirstPanel::draw);

    private final String file;
    private final Supplier<Sheet> maker;

    Drawing(String file, Supplier<Sheet> maker) {
        this.file = file;
        this.maker = maker;
    }

    String file() {
        return file;
    }

    Sheet sheet() {
        return maker.get();
    }
}
