package saddlebar.ui.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import saddlebar.model.commission.CommissionFactory;
import saddlebar.model.commission.GlassStock;
import saddlebar.model.commission.Studio;
import saddlebar.production.stock.LaidGlass;
import saddlebar.production.stock.ShelfSheet;
import saddlebar.production.stock.StockBook;

class StockShelfTest {
    @Test
    void sheetsAtHandComeFirstThenThoseToBuyAndUsedUpOnesAreGone() {
        Studio studio = CommissionFactory.eINSTANCE.createStudio();
        GlassStock amber = CommissionFactory.eINSTANCE.createGlassStock();
        amber.setName("amber");
        studio.getGlass().add(amber);
        StockBook book = new StockBook(studio);
        book.add(amber, "", 400, 300, Optional.empty(), false, false);
        book.add(amber, "", 500, 300, Optional.empty(), false, true).setUsedUp(true);
        ShelfSheet bought = new ShelfSheet("", "to buy 1", 500, 800, Optional.empty(), false, false, List.of());
        List<StockShelf.Row> rows = StockShelf.rows(studio, List.of(new LaidGlass("amber", bought, true, List.of(), List.of())));
        assertEquals(List.of("G1", "to buy 1"), rows.stream().map(StockShelf.Row::name).toList());
        assertTrue(rows.get(0).sheet().isPresent() && rows.get(1).sheet().isEmpty());
    }
}
