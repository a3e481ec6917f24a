package saddlebar.model.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import saddlebar.model.commission.CommissionFactory;
import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.CostLine;
import saddlebar.model.commission.Defect;
import saddlebar.model.commission.Disposition;
import saddlebar.model.commission.Firing;
import saddlebar.model.commission.MakingRecord;
import saddlebar.model.commission.OtherRecord;
import saddlebar.model.commission.RunSegment;
import saddlebar.model.commission.ShelfPlace;

class RecordFormsTest {
    @TempDir
    Path temp;

    private RecordLine written(RecordDraft draft) throws IOException {
        WriteGate gate = () -> new WriteGate.Hold() {
            @Override
            public void requireHeld() {
                // a test alone in its folder
            }

            @Override
            public void close() {
                // nothing was taken
            }
        };
        RecordBook book = new RecordBook(temp, gate, Desk.ofAnna(), new FrailDisk(Long.MAX_VALUE, true));
        book.append(draft);
        try (RecordReading reading = book.read()) {
            List<RecordLine> lines = reading.toList();
            return lines.get(lines.size() - 1);
        }
    }

    @Test
    void aFiringKeepsItsScheduleAsRunAndItsLoad() throws IOException {
        Firing firing = CommissionFactory.eINSTANCE.createFiring();
        firing.setName("F031");
        firing.setKilnId("kiln");
        RunSegment segment = CommissionFactory.eINSTANCE.createRunSegment();
        segment.setRateKPerH(300.0);
        segment.setTargetC(650);
        segment.setSoakMin(10);
        firing.getSegments().add(segment);
        ShelfPlace place = CommissionFactory.eINSTANCE.createShelfPlace();
        place.setPieceId("piece");
        place.getLayerIds().addAll(List.of("l1", "l2"));
        place.setPlace("2C");
        firing.getLoad().add(place);
        firing.setPeakC(653.5);
        firing.getUsed().add("kiln");
        firing.getSettings().put("weather", "wet");

        RecordLine line = written(RecordForms.draft(firing));
        assertEquals("fire", line.kind());
        MakingRecord read = RecordForms.toModel(line);
        firing.setId(line.id());
        firing.setTime(line.time());
        firing.setKind("fire");
        firing.setWho("anna");
        firing.setWriter(line.writer());
        firing.setNote("");
        firing.setFile(line.file());
        firing.setLine(1);
        assertTrue(EcoreUtil.equals(firing, read), line.toString());
    }

    @Test
    void moneyIsDecimalText() throws IOException {
        CostLine cost = CommissionFactory.eINSTANCE.createCostLine();
        cost.setAmount(new BigDecimal("0.10"));
        RecordLine line = written(RecordForms.draft(cost));
        assertEquals("0.10", line.settings().get("amount"));
        assertEquals(new BigDecimal("0.10"), ((CostLine) RecordForms.toModel(line)).getAmount());
    }

    @Test
    void aKindOfALaterVersionIsKeptWhole() throws IOException {
        RecordDraft draft = new RecordDraft(java.util.Optional.empty(), java.util.Optional.empty(), "weigh", java.util.Optional.empty(), List.of("u"),
                List.of(), Map.of("massKg", 12.5), List.of(), "");
        OtherRecord other = assertInstanceOf(OtherRecord.class, RecordForms.toModel(written(draft)));
        assertEquals("weigh", other.getKind());
        assertEquals("12.5", other.getSettings().get("massKg"));
        assertEquals(List.of("u"), other.getUsed());
    }

    @Test
    void aSettingThatDoesNotFitItsFeatureIsKeptBeside() throws IOException {
        Map<String, Object> settings = new LinkedHashMap<>();
        settings.put("severity", "much");
        settings.put("xMm", "left of the beak");
        settings.put("disposition", "touch up");
        settings.put("moon", List.of(1L, "full"));
        settings.put("id", "not the record's own");
        RecordLine line = written(RecordDraft.of(RecordKind.DEFECT).with(settings));
        Defect defect = (Defect) RecordForms.toModel(line);
        assertEquals("much", defect.getSeverity());
        assertEquals(Disposition.TOUCH_UP, defect.getDisposition());
        assertEquals("left of the beak", defect.getSettings().get("xMm"));
        assertEquals("[1,\"full\"]", defect.getSettings().get("moon"));
        assertEquals("not the record's own", defect.getSettings().get("id"));
        assertEquals(line.id(), defect.getId());
    }

    @ParameterizedTest
    @EnumSource
    void everyKindHasItsClassAndComesBackAsIt(RecordKind kind) throws IOException {
        MakingRecord object = (MakingRecord) EcoreUtil.create(kind.eClass());
        RecordLine line = written(RecordForms.draft(object));
        assertEquals(kind.key(), line.kind());
        assertEquals(kind.eClass(), RecordForms.toModel(line).eClass());
    }

    @Test
    void everyRecordClassHasAKindAndNoFeatureHidesACommonOne() {
        List<EClass> classes = new ArrayList<>();
        for (EClassifier classifier : CommissionPackage.eINSTANCE.getEClassifiers()) {
            if (classifier instanceof EClass eClass && !eClass.isAbstract() && CommissionPackage.Literals.MAKING_RECORD.isSuperTypeOf(eClass)
                    && eClass != CommissionPackage.Literals.OTHER_RECORD) {
                classes.add(eClass);
                for (EStructuralFeature feature : eClass.getEStructuralFeatures()) {
                    assertTrue(CommissionPackage.Literals.MAKING_RECORD.getEStructuralFeature(feature.getName()) == null, feature.toString());
                }
            }
        }
        assertEquals(java.util.Arrays.stream(RecordKind.values()).map(RecordKind::eClass).collect(java.util.stream.Collectors.toSet()),
                new java.util.HashSet<>(classes));
    }
}
