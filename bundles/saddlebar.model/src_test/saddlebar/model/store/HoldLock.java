package saddlebar.model.store;

import java.io.IOException;
import java.nio.file.Path;

/** A program of its own that opens a commission for writing, says so on its standard output, and stays until it is killed. */
public final class HoldLock {
    private HoldLock() {
    }

    public static void main(String[] args) throws IOException {
        try (CommissionFolder open = CommissionFolder.open(Path.of(args[0]), Access.WRITE)) {
            open.records().append(RecordDraft.of(RecordKind.NOTE).noting("held"));
            System.out.println("held");
            System.out.flush();
            System.in.read();
        }
    }
}
