package saddlebar.artwork.svg;

import java.io.IOException;
import java.nio.file.Path;

import saddlebar.artwork.Artwork;
import saddlebar.artwork.ArtworkReaders;
import saddlebar.artwork.LayerChoice;
import saddlebar.artwork.RasterRequest;
import saddlebar.artwork.ReadSettings;
import saddlebar.model.art.GrayBands;
import saddlebar.model.art.GrayCoding;
import saddlebar.model.work.Work;

/** Reads the whole page of its argument at 1200 dpi and prints its mean gray; run in a process of its own. */
final class GrayOfLargeSheet {
    private GrayOfLargeSheet() {
    }

    public static void main(String[] args) throws IOException {
        try (Artwork art = ArtworkReaders.ownReaders().read(Path.of(args[0]), ReadSettings.asDrawn())) {
            RasterRequest request = RasterRequest.ofPage(art, 1200, GrayCoding.CODE_VALUES);
            byte[] band = new byte[request.widthPx() * 64];
            double sum = 0;
            try (GrayBands bands = art.gray(LayerChoice.all(), request, Work.UNWATCHED)) {
                for (int rows = bands.read(band, 64); rows > 0; rows = bands.read(band, 64)) {
                    for (int i = 0; i < rows * request.widthPx(); i++) {
                        sum += band[i] & 0xFF;
                    }
                }
            }
            System.out.println(sum / request.widthPx() / request.heightPx());
        }
    }
}
