package saddlebar.model.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import saddlebar.model.commission.JoinedCommission;
import saddlebar.model.problem.LockedException;
import saddlebar.model.problem.Refusal;

class SharedStudioTest {
    @TempDir
    Path temp;

    private NewCommission settings(String title) throws IOException {
        return NewCommission.titled(title).sharing(temp.resolve("home/our-studio")).stockedFrom(StudioLibrary.of(CommissionFolderTest.SHARED));
    }

    @Test
    void theStudioIsMadeIfAbsentAndListsTheCommissionsThatJoined() throws IOException {
        CommissionFolder.create(temp.resolve("home/chapel"), settings("Chapel")).close();
        CommissionFolder.create(temp.resolve("home/2026/school"), settings("School")).close();
        assertFalse(Files.exists(temp.resolve("home/chapel/studio")));
        Files.move(temp.resolve("home"), temp.resolve("moved")); // relative links: nothing has to be told
        try (StudioFolder studio = StudioFolder.open(temp.resolve("moved/our-studio"), Access.READ)) {
            assertEquals(List.of("Chapel", "School"), studio.studio().getCommissions().stream().map(JoinedCommission::getName).toList());
            assertEquals(List.of("../chapel", "../2026/school"), studio.studio().getCommissions().stream().map(JoinedCommission::getFolder).toList());
            for (Path folder : studio.commissions().values()) {
                try (CommissionFolder joined = CommissionFolder.open(folder, Access.READ)) {
                    assertFalse(joined.hasOwnStudio());
                    assertEquals(studio.studio().getId(), joined.studio().getId());
                    assertEquals(studio.path(), joined.studioFolder().path());
                }
            }
        }
    }

    @Test
    void twoCommissionsWorkAtOnceAndTheStudioIsLockedOnlyWhileItIsWritten() throws IOException {
        CommissionFolder.create(temp.resolve("home/chapel"), settings("Chapel")).close();
        CommissionFolder.create(temp.resolve("home/school"), settings("School")).close();
        try (CommissionFolder chapel = CommissionFolder.open(temp.resolve("home/chapel"), Access.WRITE);
                CommissionFolder school = CommissionFolder.open(temp.resolve("home/school"), Access.WRITE)) {
            chapel.studioFolder().records().append(RecordDraft.of(RecordKind.FUSE).noting("by chapel"));
            school.studioFolder().records().append(RecordDraft.of(RecordKind.FUSE).noting("by school"));
            chapel.records().append(RecordDraft.of(RecordKind.PULL));
            try (RecordReading reading = school.studioFolder().records().read()) {
                assertEquals(List.of("by chapel", "by school"), reading.toList().stream().map(RecordLine::note).toList());
                assertEquals(List.of(), reading.problems());
            }
            assertFalse(Files.exists(temp.resolve("home/our-studio/.lock")) && Files.size(temp.resolve("home/our-studio/.lock")) > 0);
            chapel.studio().getFrames().get(0).setOutOfUse(true);
            school.studio().getFrames().get(1).setOutOfUse(true);
            chapel.save();
            LockedException changed = assertThrows(LockedException.class, school::save);
            assertTrue(changed.getMessage().contains("was changed by somebody else"), changed.getMessage());
        }
        try (StudioFolder studio = StudioFolder.open(temp.resolve("home/our-studio"), Access.READ)) {
            assertTrue(studio.studio().getFrames().get(0).isOutOfUse());
            assertFalse(studio.studio().getFrames().get(1).isOutOfUse());
        }
    }

    @Test
    void whoeverHoldsTheStudioIsNamedToOthers() throws IOException {
        CommissionFolder.create(temp.resolve("home/chapel"), settings("Chapel")).close();
        CommissionFolder.create(temp.resolve("home/school"), settings("School")).close();
        try (CommissionFolder chapel = CommissionFolder.open(temp.resolve("home/chapel"), Access.WRITE_WITH_STUDIO, Desk.ofAnna())) {
            LockedException held = assertThrows(LockedException.class,
                    () -> CommissionFolder.open(temp.resolve("home/school"), Access.WRITE_WITH_STUDIO).close());
            assertTrue(held.getMessage().contains("our-studio is being written by anna on north-desk"), held.getMessage());
            try (CommissionFolder school = CommissionFolder.open(temp.resolve("home/school"), Access.WRITE)) {
                school.commission().setTitle("still");
                school.save();
                assertThrows(LockedException.class, () -> school.studioFolder().records().append(RecordDraft.of(RecordKind.MIX)));
            }
            chapel.studio().setName("ours");
            chapel.studioFolder().records().append(RecordDraft.of(RecordKind.MIX));
            chapel.save();
        }
        StudioFolder.open(temp.resolve("home/our-studio"), Access.WRITE).close();
    }

    @Test
    void studiosAndCommissionsDoNotLieInEachOther() throws IOException {
        Path place = temp.resolve("home/our-studio/inside");
        assertThrows(Refusal.class, () -> CommissionFolder.create(place, settings("Wrong")));
        assertFalse(Files.exists(place));
        assertThrows(Refusal.class, () -> StudioFolder.open(temp, Access.READ));
    }
}
