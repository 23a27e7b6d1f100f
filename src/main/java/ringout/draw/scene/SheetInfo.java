package ringout.draw.scene;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What the title block says. The fields are those of ISO 7200:2004 (legal owner, identification number, date of issue,
 * sheet number, title, approval person, creator, document type; optional revision index, number of sheets), and beside
 * them those without which a wiring sheet cannot be trusted: airframe, tail, state drawn, hash of the data, open
 * findings and waivers on this sheet.
 *
 * @param owner legal owner; may be empty
 * @param number identification number of the document; may be empty
 * @param title what the sheet shows
 * @param documentType such as {@code wiring diagram}
 * @param aircraft type of the airframe
 * @param tail which of them; may be empty
 * @param revision revision index; may be empty
 * @param sheet number of this sheet, from 1
 * @param sheets number of sheets
 * @param hash of the data drawn; may be empty
 * @param date day of issue, if given; nothing is printed otherwise, so that the same input gives the same sheet
 * @param creator who drew it; may be empty
 * @param approver who checked it; may be empty
 * @param state state of the aircraft drawn, such as {@code as flown}
 * @param openFindings open findings on this sheet
 * @param waivers waivers on this sheet
 */
public record SheetInfo(
        String owner,
        String number,
        String title,
        String documentType,
        String aircraft,
        String tail,
        String revision,
        int sheet,
        int sheets,
        String hash,
        Optional<LocalDate> date,
        String creator,
        String approver,
        String state,
        int openFindings,
        int waivers) {
    /** {@return a sheet 1 of 1 without owner, tail, revision, hash, date, names or findings} */
    public static SheetInfo of(String title, String documentType, String aircraft, String state) {
        return new SheetInfo(
                "", "", title, documentType, aircraft, "", "", 1, 1, "", Optional.empty(), "", "", state, 0, 0);
    }

    /** {@return the same sheet under another title} */
    public SheetInfo entitled(String newTitle) {
        return new SheetInfo(
                owner,
                number,
                newTitle,
                documentType,
                aircraft,
                tail,
                revision,
                sheet,
                sheets,
                hash,
                date,
                creator,
                approver,
                state,
                openFindings,
                waivers);
    }

    /** {@return the same sheet with owner and identification number} */
    public SheetInfo ownedBy(String newOwner, String newNumber) {
        return new SheetInfo(
                newOwner,
                newNumber,
                title,
                documentType,
                aircraft,
                tail,
                revision,
                sheet,
                sheets,
                hash,
                date,
                creator,
                approver,
                state,
                openFindings,
                waivers);
    }

    /** {@return the same sheet of a tail at a revision, with the hash of its data} */
    public SheetInfo ofTail(String newTail, String newRevision, String newHash) {
        return new SheetInfo(
                owner,
                number,
                title,
                documentType,
                aircraft,
                newTail,
                newRevision,
                sheet,
                sheets,
                newHash,
                date,
                creator,
                approver,
                state,
                openFindings,
                waivers);
    }

    /** {@return the same sheet as number n of m} */
    public SheetInfo numbered(int newSheet, int newSheets) {
        return new SheetInfo(
                owner,
                number,
                title,
                documentType,
                aircraft,
                tail,
                revision,
                newSheet,
                newSheets,
                hash,
                date,
                creator,
                approver,
                state,
                openFindings,
                waivers);
    }

    /** {@return the same sheet with names and, if given, a day of issue} */
    public SheetInfo signed(String newCreator, String newApprover, Optional<LocalDate> newDate) {
        return new SheetInfo(
                owner,
                number,
                title,
                documentType,
                aircraft,
                tail,
                revision,
                sheet,
                sheets,
                hash,
                newDate,
                newCreator,
                newApprover,
                state,
                openFindings,
                waivers);
    }

    /** {@return the same sheet with its counts of open findings and waivers} */
    public SheetInfo counting(int newOpenFindings, int newWaivers) {
        return new SheetInfo(
                owner,
                number,
                title,
                documentType,
                aircraft,
                tail,
                revision,
                sheet,
                sheets,
                hash,
                date,
                creator,
                approver,
                state,
                newOpenFindings,
                newWaivers);
    }
}
