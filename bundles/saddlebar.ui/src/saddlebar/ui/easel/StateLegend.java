package saddlebar.ui.easel;

import saddlebar.production.light.StateHatch;
import saddlebar.production.light.EaselScene;
import java.util.EnumMap;
import java.util.Map;

import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;

import saddlebar.model.commission.MakingState;
import saddlebar.ui.Messages;
import saddlebar.ui.tree.MakingWords;

/** Says in a corner of the Easel which hatch means what, and how many pieces have it. */
final class StateLegend {
    private static final int SAMPLE_WIDTH_PT = 30;
    private static final int SAMPLE_HEIGHT_PT = 18;
    private static final int FREE_PT = 8;
    private static final int GROUND_RGB = 0xFBFAF7;
    private static final int INK_RGB = 0x1B1D20;

    private final Map<MakingState, Image> samples = new EnumMap<>(MakingState.class);

    void dispose() {
        samples.values().forEach(Image::dispose);
        samples.clear();
    }

    void paint(GC gc, Rectangle area, EaselScene scene, int zoomPercent) {
        Map<MakingState, Integer> counts = new EnumMap<>(MakingState.class);
        scene.pieces().forEach(piece -> counts.merge(scene.state(piece), 1, Integer::sum));
        int rowPt = Math.max(SAMPLE_HEIGHT_PT, gc.getFontMetrics().getHeight()) + FREE_PT / 2;
        int wordsPt = 0;
        for (Map.Entry<MakingState, Integer> entry : counts.entrySet()) {
            wordsPt = Math.max(wordsPt, gc.textExtent(words(entry)).x);
        }
        int width = SAMPLE_WIDTH_PT + wordsPt + 3 * FREE_PT;
        int height = counts.size() * rowPt + 2 * FREE_PT - FREE_PT / 2;
        int left = area.x + area.width - width - FREE_PT;
        int top = area.y + area.height - height - FREE_PT;
        gc.setAlpha(235);
        gc.setBackground(ScreenColours.of(GROUND_RGB));
        gc.fillRoundRectangle(left, top, width, height, FREE_PT, FREE_PT);
        gc.setAlpha(255);
        gc.setForeground(ScreenColours.of(INK_RGB));
        int y = top + FREE_PT;
        for (Map.Entry<MakingState, Integer> entry : counts.entrySet()) {
            Image sample = samples.computeIfAbsent(entry.getKey(), state -> ScreenPicture
                    .of(StateHatch.sample(state, SAMPLE_WIDTH_PT, SAMPLE_HEIGHT_PT, zoomPercent / 100.0), zoomPercent).toImage(gc.getDevice()));
            gc.drawImage(sample, left + FREE_PT, y);
            String words = words(entry);
            Point size = gc.textExtent(words);
            gc.drawText(words, left + SAMPLE_WIDTH_PT + 2 * FREE_PT, y + (SAMPLE_HEIGHT_PT - size.y) / 2, SWT.DRAW_TRANSPARENT);
            y += rowPt;
        }
    }

    private static String words(Map.Entry<MakingState, Integer> entry) {
        return NLS.bind(Messages.State_some, entry.getValue(), MakingWords.of(entry.getKey()));
    }
}
