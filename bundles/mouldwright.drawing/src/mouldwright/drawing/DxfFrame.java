package mouldwright.drawing;

import java.util.List;
import java.util.TreeSet;

/** What a DXF file of the AC1015 kind has around its entities: header with the unit, tables, blocks and objects, as its readers want them. */
final class DxfFrame {

    private final StringBuilder out;
    private final Extent extent;
    private final List<String> layers;
    private final String nextHandle;

    DxfFrame(StringBuilder out, Extent extent, List<String> layers, String nextHandle) {
        this.out = out;
        this.extent = extent;
        this.layers = List.copyOf(new TreeSet<>(layers));
        this.nextHandle = nextHandle;
    }

    void around(StringBuilder entities) {
        header();
        section("TABLES");
        tables();
        end();
        section("BLOCKS");
        block("*Model_Space", "1F", "20", "21");
        block("*Paper_Space", "1B", "1C", "1D");
        end();
        section("ENTITIES");
        out.append(entities);
        end();
        section("OBJECTS");
        write(0, "DICTIONARY", 5, "C", 330, "0", 100, "AcDbDictionary", 281, "1", 3, "ACAD_GROUP", 350, "D", 0, "DICTIONARY", 5, "D", 330, "C", 100, "AcDbDictionary", 281, "1");
        end();
        write(0, "EOF");
    }

    private void header() {
        section("HEADER");
        write(9, "$ACADVER", 1, "AC1015", 9, "$DWGCODEPAGE", 3, "ANSI_1252", 9, "$INSUNITS", 70, "4", 9, "$MEASUREMENT", 70, "1", 9, "$HANDSEED", 5, nextHandle,
                9, "$EXTMIN", 10, Figures.of(extent.left()), 20, Figures.of(extent.bottom()), 30, "0", 9, "$EXTMAX", 10, Figures.of(extent.right()), 20, Figures.of(extent.top()), 30, "0");
        end();
    }

    private void tables() {
        table("VPORT", "8", 1);
        write(0, "VPORT", 5, "29", 330, "8", 100, "AcDbSymbolTableRecord", 100, "AcDbViewportTableRecord", 2, "*Active", 70, "0", 10, "0", 20, "0", 11, "1", 21, "1",
                12, Figures.of((extent.left() + extent.right()) / 2), 22, Figures.of((extent.bottom() + extent.top()) / 2), 40, Figures.of(Math.max(1, extent.height())), 41, "1.5");
        write(0, "ENDTAB");
        table("LTYPE", "5", 3);
        lineType("14", "ByBlock", "");
        lineType("15", "ByLayer", "");
        lineType("16", "Continuous", "Solid line");
        write(0, "ENDTAB");
        table("LAYER", "2", layers.size() + 1);
        layer("10", "0");
        int handle = 0x60;
        for (String name : layers)
            layer(Integer.toHexString(handle++).toUpperCase(java.util.Locale.ROOT), name);
        write(0, "ENDTAB");
        table("STYLE", "3", 1);
        write(0, "STYLE", 5, "11", 330, "3", 100, "AcDbSymbolTableRecord", 100, "AcDbTextStyleTableRecord", 2, "Standard", 70, "0", 40, "0", 41, "1", 50, "0", 71, "0", 42, "2.5", 3, "txt", 4, "");
        write(0, "ENDTAB");
        table("VIEW", "6", 0);
        write(0, "ENDTAB");
        table("UCS", "7", 0);
        write(0, "ENDTAB");
        table("APPID", "9", 1);
        write(0, "APPID", 5, "12", 330, "9", 100, "AcDbSymbolTableRecord", 100, "AcDbRegAppTableRecord", 2, "ACAD", 70, "0");
        write(0, "ENDTAB");
        write(0, "TABLE", 2, "DIMSTYLE", 5, "A", 330, "0", 100, "AcDbSymbolTable", 70, "1", 100, "AcDbDimStyleTable", 71, "0");
        write(0, "DIMSTYLE", 105, "27", 330, "A", 100, "AcDbSymbolTableRecord", 100, "AcDbDimStyleTableRecord", 2, "Standard", 70, "0");
        write(0, "ENDTAB");
        table("BLOCK_RECORD", "1", 2);
        blockRecord("1F", "*Model_Space");
        blockRecord("1B", "*Paper_Space");
        write(0, "ENDTAB");
    }

    private void table(String name, String handle, int count) {
        write(0, "TABLE", 2, name, 5, handle, 330, "0", 100, "AcDbSymbolTable", 70, Integer.toString(count));
    }

    private void lineType(String handle, String name, String words) {
        write(0, "LTYPE", 5, handle, 330, "5", 100, "AcDbSymbolTableRecord", 100, "AcDbLinetypeTableRecord", 2, name, 70, "0", 3, words, 72, "65", 73, "0", 40, "0");
    }

    private void layer(String handle, String name) {
        write(0, "LAYER", 5, handle, 330, "2", 100, "AcDbSymbolTableRecord", 100, "AcDbLayerTableRecord", 2, name, 70, "0", 62, "7", 6, "Continuous");
    }

    private void blockRecord(String handle, String name) {
        write(0, "BLOCK_RECORD", 5, handle, 330, "1", 100, "AcDbSymbolTableRecord", 100, "AcDbBlockTableRecord", 2, name);
    }

    private void block(String name, String record, String begin, String end) {
        write(0, "BLOCK", 5, begin, 330, record, 100, "AcDbEntity", 8, "0", 100, "AcDbBlockBegin", 2, name, 70, "0", 10, "0", 20, "0", 30, "0", 3, name, 1, "");
        write(0, "ENDBLK", 5, end, 330, record, 100, "AcDbEntity", 8, "0", 100, "AcDbBlockEnd");
    }

    private void section(String name) {
        write(0, "SECTION", 2, name);
    }

    private void end() {
        write(0, "ENDSEC");
    }

    /** Codes and values in turn. */
    private void write(Object... pairs) {
        for (int i = 0; i < pairs.length; i += 2)
            DxfWriter.pair(out, (Integer) pairs[i], (String) pairs[i + 1]);
    }
}
