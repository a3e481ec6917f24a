package saddlebar.stencil.mesh;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Common meshes to choose from, coarse to fine; pairs of count and thread are common practice, no source. */
public final class MeshTable {
    private MeshTable() {
    }

    public static List<Mesh> common() {
        List<Mesh> meshes = new ArrayList<>();
        try (InputStream stream = MeshTable.class.getResourceAsStream("meshes.csv");
                BufferedReader lines = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                if (line.isBlank() || line.startsWith("#") || line.startsWith("threads")) {
                    continue;
                }
                String[] cells = line.split(",");
                meshes.add(new Mesh(Double.parseDouble(cells[0]), Double.parseDouble(cells[1])));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return List.copyOf(meshes);
    }
}
