package bothy.diary.sql;

import bothy.diary.StoreFailure;
import bothy.diary.StoreFailure.Reason;
import java.util.Optional;

/** The sentences of a failing store: what is wrong, where, what to do. */
final class Sentences {
    private Sentences() {}

    static StoreFailure readOnly(String place, Throwable cause) {
        return new StoreFailure(
                Reason.READ_ONLY,
                "The diary " + place
                        + " cannot be written: the file or its folder is read-only. Give the program's user leave to "
                        + "write the file and its folder, or name another file with --db.",
                cause);
    }

    static StoreFailure notADiary(String place, Throwable cause) {
        return new StoreFailure(
                Reason.CORRUPT,
                place
                        + " is not a database, so it cannot be a diary. It was left as it is. Name another file with --db, or put a "
                        + "backup in its place.",
                cause);
    }

    static StoreFailure otherTables(String place, Throwable cause) {
        return new StoreFailure(
                Reason.OTHER,
                place
                        + " holds tables of another program. They were left as they are. Name another file or an empty database "
                        + "with --db.",
                cause);
    }

    static StoreFailure damaged(String place, String found, Throwable cause) {
        return new StoreFailure(
                Reason.CORRUPT,
                "The diary " + place + " is damaged (" + found
                        + "). Nothing was written to it. Keep a copy of it, put a backup in "
                        + "its place, and start again.",
                cause);
    }

    static StoreFailure full(String place, Throwable cause) {
        return new StoreFailure(
                Reason.FULL,
                "The disk that holds the diary " + place
                        + " is full. What was told before is safe, the last was not written. Free "
                        + "some space and say it again.",
                cause);
    }

    static StoreFailure locked(String place, Throwable cause) {
        return new StoreFailure(
                Reason.LOCKED,
                "The diary " + place
                        + " is locked by another program. Close what else has it open (a second Bothy, a database "
                        + "browser, a backup) and try again.",
                cause);
    }

    static StoreFailure folderMissing(String place, String folder) {
        return new StoreFailure(
                Reason.NOT_THERE,
                "The folder " + folder + " for the diary " + place
                        + " is not there. Make it, or name another file with --db.",
                null);
    }

    static StoreFailure folderInstead(String place) {
        return new StoreFailure(
                Reason.NOT_THERE,
                place + " is a folder. Name a file in it with --db, such as " + place + "/diary.db.",
                null);
    }

    static StoreFailure cannotOpen(String place, Throwable cause) {
        return new StoreFailure(
                Reason.NOT_THERE,
                "The diary " + place
                        + " cannot be opened. Look whether its folder is there and the program's user may read and "
                        + "write it, or name another file with --db.",
                cause);
    }

    static StoreFailure newer(String place, String found, String known) {
        return new StoreFailure(
                Reason.NEWER,
                "The diary " + place + " was written by a newer version of Bothy (its tables are version " + found
                        + ", this one knows up to " + known
                        + "). It was left as it is. Start the newer version, or name another file with --db.",
                null);
    }

    static StoreFailure halfMigrated(String place, String version) {
        return new StoreFailure(
                Reason.CORRUPT,
                "Bringing the diary " + place + " up to version " + version
                        + " was broken off. Put back the backup made before "
                        + "the new version was started, and start again.",
                null);
    }

    static StoreFailure noServer(String place, Throwable cause) {
        return new StoreFailure(
                Reason.NOT_THERE,
                "No PostgreSQL answers at " + place
                        + ". Look whether the server runs, and whether host and port in --db are right.",
                cause);
    }

    static StoreFailure noDatabase(String place, Throwable cause) {
        return new StoreFailure(
                Reason.NOT_THERE,
                "The PostgreSQL server has no database of the name in " + place
                        + ". Make it with createdb, or correct the name in " + "--db.",
                cause);
    }

    static StoreFailure notLetIn(String place, Throwable cause) {
        return new StoreFailure(
                Reason.NOT_THERE,
                "PostgreSQL at " + place + " does not let this user in. Correct user and password in --db.",
                cause);
    }

    static StoreFailure notAllowed(String place, Throwable cause) {
        return new StoreFailure(
                Reason.READ_ONLY,
                "PostgreSQL at " + place
                        + " does not let this user write. Grant the user rights on the schema, or use the main "
                        + "server when this is a read-only copy.",
                cause);
    }

    static StoreFailure unreadableLine(String place, String what, Throwable cause) {
        return new StoreFailure(
                Reason.CORRUPT,
                what + " in " + place
                        + " cannot be read: it is damaged or was written by a newer version of Bothy. Start the newer "
                        + "version, or put back a backup.",
                cause);
    }

    static StoreFailure other(String place, Throwable cause) {
        String said = Optional.ofNullable(rootOf(cause).getMessage()).orElse("no reason given");
        return new StoreFailure(
                Reason.OTHER,
                "The diary " + place + " could not be used: "
                        + withoutPassword(said.lines().findFirst().orElse("")) + ". Nothing of "
                        + "the last step was kept; try again.",
                cause);
    }

    /** An address or message with passwords blotted out. */
    static String withoutPassword(String address) {
        return address.replaceAll("(?i)(password=)[^&;\\s]*", "$1…").replaceAll("//[^/@\\s]*:[^/@\\s]*@", "//…@");
    }

    private static Throwable rootOf(Throwable thrown) {
        return thrown.getCause() == null || thrown.getCause() == thrown ? thrown : rootOf(thrown.getCause());
    }
}
