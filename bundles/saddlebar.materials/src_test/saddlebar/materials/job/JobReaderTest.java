package saddlebar.materials.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import saddlebar.model.art.OutlineMm;
import saddlebar.model.commission.CommissionFactory;
import saddlebar.model.commission.Paint;
import saddlebar.model.commission.PaintLot;
import saddlebar.model.commission.PriceBook;
import saddlebar.model.store.Access;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.store.NewCommission;
import saddlebar.model.store.RecordDraft;
import saddlebar.model.store.RecordKind;

class JobReaderTest {
    @TempDir
    private Path temp;

    /** 300 x 300 in four squares of 150: 600 of joints in four, 1200 around; the sum of perimeters is 2 x 600 + 1200. */
    @Test
    void jointsOfFourSquares() {
        List<OutlineMm> squares = List.of(OutlineMm.rectangle(0, 0, 150, 150), OutlineMm.rectangle(150, 0, 150, 150), OutlineMm.rectangle(0, 150, 150, 150),
                OutlineMm.rectangle(150, 150, 150, 150));
        JointLengths lengths = JointLengths.of(squares);
        assertEquals(List.of(150.0, 150.0, 150.0, 150.0), lengths.jointsMm());
        assertEquals(600, lengths.innerMm(), 1e-9);
        assertEquals(1200, lengths.edgeMm(), 1e-9);
        assertEquals(2400, 2 * lengths.innerMm() + lengths.edgeMm(), 1e-9);
    }

    /** A hole is a joint with what lies in it: 400 around a square of 100 within one of 300. */
    @Test
    void jointAroundAnIsland() {
        OutlineMm ring = OutlineMm.of(List.of(new double[] {0, 0, 300, 0, 300, 300, 0, 300}, new double[] {100, 100, 200, 100, 200, 200, 100, 200}));
        JointLengths lengths = JointLengths.of(List.of(ring, OutlineMm.rectangle(100, 100, 100, 100)));
        assertEquals(List.of(400.0), lengths.jointsMm());
        assertEquals(1200, lengths.edgeMm(), 1e-9);
    }

    private static PaintLot lot(String name, LocalDate received, double massG) {
        PaintLot lot = CommissionFactory.eINSTANCE.createPaintLot();
        lot.setName(name);
        lot.setReceived(received);
        lot.setMassG(massG);
        return lot;
    }

    /** Lots of 100 and 200 g; 30 g mixed of the first, 20 g of no named lot, 10 g spilt; a mix of 500 g was corrected to those 30. */
    @Test
    void powderOnHand() throws IOException {
        Path folder = temp.resolve("c");
        try (CommissionFolder open = CommissionFolder.create(folder, NewCommission.titled("Powder"))) {
            Paint paint = CommissionFactory.eINSTANCE.createPaint();
            paint.setName("test matt");
            paint.setDensityGPerCm3(4.5);
            paint.setPricePerKg(new BigDecimal("90"));
            paint.getLots().add(lot("old", LocalDate.of(2025, 5, 1), 100));
            paint.getLots().add(lot("new", LocalDate.of(2026, 1, 5), 200));
            open.studio().getPaints().add(paint);
            PriceBook book = CommissionFactory.eINSTANCE.createPriceBook();
            open.studio().setPriceBook(book);
            open.save();
            String old = paint.getLots().get(0).getId();
            String wrong = open.records().append(RecordDraft.of(RecordKind.MIX).with(Map.of("paintId", paint.getId(), "lotId", old, "powderG", 500.0))).id();
            open.records().append(RecordDraft.of(RecordKind.MIX).with(Map.of("paintId", paint.getId(), "lotId", old, "powderG", 30.0))
                    .superseding(List.of(wrong)));
            open.records().append(RecordDraft.of(RecordKind.MIX).with(Map.of("paintId", paint.getId(), "powderG", 20.0)));
            open.records().append(RecordDraft.of(RecordKind.STOCK).with(Map.of("itemId", old, "quantity", -0.01, "unit", "kg", "reason", "spilt")));
        }
        try (CommissionFolder open = CommissionFolder.open(folder, Access.READ)) {
            CostJob job = JobReader.read(open, JobRecords.of(open));
            assertTrue(job.windows().isEmpty());
            PaintJob paint = job.studio().paints().get(0);
            assertEquals(240, paint.stock().onHandG(), 1e-9);
            assertEquals(List.of(40.0, 200.0), paint.stock().lots().stream().map(lot -> lot.massG()).toList());
            assertTrue(paint.flags().silica());
        }
    }
}
