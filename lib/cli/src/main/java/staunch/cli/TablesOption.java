package staunch.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
import picocli.CommandLine.Option;
import staunch.report.WholeFile;
import staunch.table.CaseTables;
import staunch.table.TableBook;
import staunch.table.TableExport;

/** Where the tables go as a workbook and as CSV. */
final class TablesOption {
    @Option(
            names = "--xlsx",
            paramLabel = "FILE",
            description = "Write the tables as a workbook, numbers to nine digits; replaced as a whole.")
    private Path workbook;

    @Option(
            names = "--csv",
            paramLabel = "FOLDER",
            description =
                    "Write the tables into this folder, one CSV file for each, and contents.csv, which lists them.")
    private Path folder;

    boolean isGiven() {
        return workbook != null || folder != null;
    }

    /** Writes the tables where they are asked for, and says where; each file whole or not at all. */
    void write(Supplier<TableBook> tables, PrintWriter out) throws IOException {
        if (!isGiven()) {
            return;
        }
        TableBook book = tables.get();
        String count = ", " + book.tables().size() + (book.tables().size() == 1 ? " table" : " tables");
        if (workbook != null) {
            workbook(book, workbook);
            out.println("Workbook: " + workbook + count);
        }
        if (folder != null) {
            csv(book, folder);
            out.println("CSV: " + folder + count);
        }
    }

    static Path workbook(TableBook book, Path file) throws IOException {
        return WholeFile.write(file, out -> TableExport.workbook(book, out));
    }

    /** The list of contents comes last, when what it lists is there. */
    static Path csv(TableBook book, Path folder) throws IOException {
        List<String> files = TableExport.fileNames(book.tables());
        for (int i = 0; i < files.size(); i++) {
            CaseTables.Entry entry = book.tables().get(i);
            WholeFile.write(folder.resolve(files.get(i)), out -> TableExport.csv(entry.table(), out));
        }
        WholeFile.write(folder.resolve(TableExport.CONTENTS_FILE), out -> TableExport.contents(book, out));
        return folder;
    }
}
