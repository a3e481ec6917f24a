package saddlebar.ui.kiln;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import saddlebar.model.commission.FiringSchedule;
import saddlebar.model.commission.Kiln;
import saddlebar.model.commission.Window;
import saddlebar.model.store.Access;
import saddlebar.model.store.CommissionFolder;

class ShelfPlanTest {
    private static final Path DEMO = Path.of("../../demo-projects/first-panel");

    @Test
    void aWindowIsLaidWithTheLayersOfTheSchedule() throws IOException {
        try (CommissionFolder open = CommissionFolder.open(DEMO, Access.READ)) {
            Window window = open.windows().get(0);
            Kiln kiln = open.studio().getKilns().get(0);
            FiringSchedule trace = open.studio().getSchedules().stream().filter(known -> known.getName().equals("trace 650")).findFirst().orElseThrow();
            ShelfPlan plan = ShelfPlan.of(window.getPanels().get(0).getPieces(), kiln, Optional.of(trace));
            assertEquals(6, plan.pieces().size() + plan.left().size());
            assertTrue(plan.load().check().isEmpty(), plan.load().check().toString());
            assertEquals(List.of("trace"), plan.pieces().get(0).layers());
            assertTrue(plan.pieces().get(0).place().matches("[ABC][123]"));
            ShelfPlan again = ShelfPlan.of(plan.pieces(), kiln, ShelfPlan.known(open.windows()));
            assertEquals(plan.load(), again.load(), "what is recorded is shown where it lay");
            assertEquals(0, ShelfPlan.empty(kiln).load().use());
        }
    }
}
