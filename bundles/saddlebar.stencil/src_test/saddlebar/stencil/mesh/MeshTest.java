package saddlebar.stencil.mesh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import saddlebar.model.problem.Refusal;
import saddlebar.stencil.ActualScreen;

class MeshTest {
    /** Geometry by hand: p = 25400/n, w = p - d, A = (w/p)^2, V = A k d with k = 1.6. */
    @ParameterizedTest
    @CsvSource({"220, 48, 115.45, 67.45, 34.14, 26.22", "156, 64, 162.82, 98.82, 36.84, 37.72", "305, 34, 83.28, 49.28, 35.01, 19.05"})
    void geometry(double count, double thread, double pitch, double opening, double openPercent, double volume) {
        Mesh mesh = new Mesh(count, thread, 1.6);
        assertEquals(pitch, mesh.pitchUm(), 0.006);
        assertEquals(opening, mesh.openingUm(), 0.006);
        assertEquals(openPercent, 100 * mesh.openArea(), 0.006);
        assertEquals(volume, mesh.volumeCm3PerM2(), 0.006);
    }

    /** Three published specifications of one count, no maker named: opening um, open %, fabric um, volume cm3/m2. */
    @ParameterizedTest
    @CsvSource({"225, 40, 73, 42, 59, 25", "225, 48, 65, 33, 72, 24", "225, 54, 59, 27, 84, 23"})
    void publishedMeshes(double count, double thread, double opening, double openPercent, double fabric, double volume) {
        Mesh mesh = new Mesh(count, thread, fabric / thread);
        assertEquals(opening, mesh.openingUm(), 1);
        assertEquals(openPercent, 100 * mesh.openArea(), 1);
        assertEquals(fabric, mesh.fabricUm(), 1e-9);
        assertEquals(volume, mesh.volumeCm3PerM2(), 1);
    }

    /** Common practice, no source: two threads and an opening. */
    @ParameterizedTest
    @CsvSource({"220, 48, 163", "156, 64, 227", "305, 34, 117"})
    void finestDot(double count, double thread, double dot) {
        assertEquals(dot, new Mesh(count, thread).finestDotUm(), 0.6);
    }

    @Test
    void finestBridgeAndGrain() {
        assertEquals(162.8, new Mesh(156, 64).finestBridgeUm(), 0.1);
        assertEquals(150, new Mesh(220, 48).finestBridgeUm());
        assertEquals(22.5, new Mesh(220, 48).grainUm(), 0.1);
    }

    @Test
    void meshesThatCannotBe() {
        assertEquals("thread-um", assertThrows(Refusal.class, () -> new Mesh(220, 115.5)).where());
        assertEquals("thread-um", assertThrows(Refusal.class, () -> new Mesh(220, 0)).where());
        assertEquals("thread-um", assertThrows(Refusal.class, () -> new Mesh(220, Double.NaN)).where());
        assertEquals("count", assertThrows(Refusal.class, () -> new Mesh(5, 48)).where());
        assertEquals("count", assertThrows(Refusal.class, () -> new Mesh(Double.NaN, 48)).where());
    }

    @Test
    void unusualMeshes() {
        assertTrue(new Mesh(220, 48).advice().isEmpty());
        assertEquals("mesh-closed", new Mesh(220, 75).advice().get(0).code()); // 12 %
        assertEquals("mesh-open", new Mesh(110, 40).advice().get(0).code()); // 68 %
    }

    @Test
    void screensForAMesh() {
        Mesh mesh = new Mesh(220, 48);
        assertTrue(MeshAdvice.of(mesh, am(40)).isEmpty(), "5.5 threads a cell: good");
        assertEquals("ruling-fine", MeshAdvice.of(mesh, am(50)).get(0).code());
        assertEquals("ruling-too-fine", MeshAdvice.of(mesh, am(56)).get(0).code());
        assertTrue(MeshAdvice.of(mesh, dots(0.254)).isEmpty());
        assertEquals("dots-too-fine", MeshAdvice.of(mesh, dots(0.16)).get(0).code());
        assertEquals("gaps-too-fine", MeshAdvice.of(new Mesh(305, 34), dots(0.127)).get(0).code());
    }

    private static ActualScreen am(double lpi) {
        return new ActualScreen(OptionalDouble.of(lpi), OptionalDouble.of(0), OptionalDouble.empty(), 901);
    }

    private static ActualScreen dots(double mm) {
        return new ActualScreen(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.of(mm), 256);
    }
}
