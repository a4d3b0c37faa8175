package staunch.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;

class TableTextTest {
    private static final String SENTENCE = "a text that goes on and on about what may break where and when, ";

    @Test
    void aNarrowTableKeepsOneLineForEachRow() {
        Table table = Table.create(
                "t", StringColumn.create("what", "shoe"), DoubleColumn.create("Depth [ft]", new double[] {3500}));
        assertEquals("""
                what  Depth
                       [ft]
                ----  -----
                shoe   3500
                """, TableText.of(table, 10));
    }

    @Test
    void aWideTableIsFoldedBetweenWordsAndLosesNone() {
        Table table = Table.create(
                "t",
                StringColumn.create("Governing limit", SENTENCE + "first", SENTENCE + "second"),
                DoubleColumn.create("Depth of it [ft]", new double[] {3500, 12600}),
                StringColumn.create("Remark", SENTENCE + "third", "short"));
        String text = TableText.of(table, 10);
        assertTrue(text.lines().allMatch(l -> l.length() <= 100), text);
        for (String word : (SENTENCE + "first second third short 3500 12600").split(" ")) {
            assertTrue(Arrays.asList(text.split("\\s+")).contains(word), word);
        }
    }

    @Test
    void aNumberKeepsItsUnit() {
        String[] sizes = new String[12];
        Arrays.fill(sizes, "holds at 12 1/4 in hole");
        Table table = Table.create("t");
        for (int i = 0; i < sizes.length; i++) {
            table.addColumns(StringColumn.create("c" + i, sizes[i]));
        }
        assertEquals(
                2,
                TableText.of(table, 10)
                                .lines()
                                .filter(l -> l.contains("12 1/4 in"))
                                .count()
                        + 1);
    }

    @Test
    void aWordLongerThanALineIsNotCut() {
        String word = "x".repeat(130);
        Table table = Table.create("t", StringColumn.create("a", word), StringColumn.create("b", "one two"));
        assertTrue(TableText.of(table, 10).contains(word));
    }
}
