import java.util.function.Supplier;

/** The drawings, each below the name of its commission. */
enum Drawing {
    EBB_TIDE("estuary-reading-room/W01-ebb-tide.svg", EbbTide::draw),
    READING_HERON("estuary-reading-room/W02-reading-heron.svg", ReadingHeron::draw),
    MOON_AND_EELGRASS("estuary-reading-room/W03-moon-and-eelgrass.svg", MoonAndEelgrass::draw),
    FIRST_PANEL("first-panel/first-panel.svg", FirstPanel::draw);

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
