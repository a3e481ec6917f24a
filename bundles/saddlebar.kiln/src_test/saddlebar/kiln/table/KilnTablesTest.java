package saddlebar.kiln.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import saddlebar.kiln.glass.Glass;
import saddlebar.model.problem.Refusal;

class KilnTablesTest {
    @TempDir
    Path temp;

    @Test
    void readsTheTablesOfTheTree() throws IOException {
        KilnTables tables = KilnTables.read(Path.of("../../shared"));
        assertEquals(Glass.DGG_I, tables.glass("float").orElseThrow().viscosity());
        assertEquals(529.2, tables.glass("SRM-710").orElseThrow().viscosity().strainC(), 0.05);
        // solved outside of this program through its three measured points
        assertEquals(415.8, tables.glass("srm-711").orElseThrow().viscosity().strainC(), 0.05);
        assertEquals(Glass.DGG_I, tables.glass("clear").orElseThrow().viscosity(), "a glass without a heat model of its own is taken as float");
        assertTrue(tables.glass("no such glass").isEmpty());
        assertTrue(tables.paintNames().contains("tracing black"));
        assertTrue(tables.kilnNames().contains("flat bed kiln"));
    }

    @Test
    void refusesARowThatCannotBeUsed() throws IOException {
        Files.writeString(temp.resolve("heat-models.csv"), "name,a,b_k,t0_c,t_1e1_5_c,t_1e6_6_c,t_1e12_c\nodd,,,,700,800,900\n");
        assertTrue(assertThrows(Refusal.class, () -> KilnTables.read(temp)).getMessage()
                .startsWith("heat-models.csv:2: no viscosity curve passes through"));
        Files.writeString(temp.resolve("heat-models.csv"), "name,a,b_k,t0_c\nodd,x,1,2\n");
        assertTrue(assertThrows(Refusal.class, () -> KilnTables.read(temp)).getMessage()
                .startsWith("heat-models.csv:2: a is 'x', which is no number; "));
        Files.delete(temp.resolve("heat-models.csv"));
        assertEquals(3, KilnTables.read(temp).glassNames().size());
    }
}
