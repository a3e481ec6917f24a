package saddlebar.artwork;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;

import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferencePolicyOption;

import saddlebar.artwork.pdf.PdfReader;
import saddlebar.artwork.raster.RasterReader;
import saddlebar.artwork.svg.SvgReader;
import saddlebar.model.problem.Refusal;

/** All readers there are: picks the one that fits a file's content. */
@Component(service = ArtworkReaders.class)
public final class ArtworkReaders {
    /** How much of a file a reader is shown to judge by. */
    public static final int HEAD_BYTES = 4096;

    private final List<ArtworkReader> readers;

    /** Static and greedy: a newcomer makes a new collector. */
    @Activate
    public ArtworkReaders(@Reference(policyOption = ReferencePolicyOption.GREEDY) List<ArtworkReader> readers) {
        this.readers = List.copyOf(readers);
    }

    /** The readers of this bundle, for use without OSGi. */
    public static ArtworkReaders ownReaders() {
        return new ArtworkReaders(List.of(new RasterReader(), new PdfReader(), new SvgReader()));
    }

    /**
     * Reads an art file.
     *
     * @throws Refusal if there is no such file, nobody reads its kind, or its reader refuses it
     */
    public Artwork read(Path file, ReadSettings settings) throws IOException {
        ArtworkReader reader = reader(file);
        if (settings.page() > 1) {
            int pages = reader.pages(file);
            if (settings.page() > pages) {
                throw noPage(String.valueOf(file.getFileName()), settings.page(), pages);
            }
        }
        return reader.read(file, settings);
    }

    /** A page that a file does not have. */
    public static Refusal noPage(String name, int page, int pages) {
        return new Refusal(name, "it has no page " + page + " but " + pages + (pages == 1 ? " page" : " pages"),
                pages == 1 ? "leave the page out" : "name one of them");
    }

    /**
     * How many pages an art file has.
     *
     * @throws Refusal if there is no such file, nobody reads its kind, or its reader refuses it
     */
    public int pages(Path file) throws IOException {
        return reader(file).pages(file);
    }

    private ArtworkReader reader(Path file) throws IOException {
        String name = String.valueOf(file.getFileName());
        if (Files.isDirectory(file)) {
            throw new Refusal(name, "this is a folder, not a file", "name the art file in it");
        }
        if (!Files.exists(file)) {
            throw new Refusal(name, "there is no such file in " + file.toAbsolutePath().getParent(), "check the name and the folder");
        }
        byte[] head;
        try (InputStream in = Files.newInputStream(file)) {
            head = in.readNBytes(HEAD_BYTES);
        } catch (java.nio.file.AccessDeniedException e) {
            throw new Refusal(name, "the file may not be read", "give yourself the right to read it", e);
        }
        if (head.length == 0) {
            throw new Refusal(name, "the file is empty", "save or copy the artwork again");
        }
        for (ArtworkReader reader : readers) {
            if (reader.canRead(name, head)) {
                return reader;
            }
        }
        throw new Refusal(name, "this is no kind of artwork that can be read", "save it as "
                + readers.stream().map(ArtworkReader::kinds).collect(Collectors.joining(", ")));
    }
}
