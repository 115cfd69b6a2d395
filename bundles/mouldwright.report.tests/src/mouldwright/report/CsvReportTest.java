package mouldwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Quantities as comma-separated values (RFC 4180, but for the line end). */
class CsvReportTest {

    @Test void theColumnsAreThoseWrittenDown() {
        String csv = new CsvReport().print(Plans.estimate());
        assertThat(csv).startsWith("id,stage,label,value,low,high,unit\nshape.length,shape,Length,0.5,0.5,0.5,m\n");
        assertThat(csv).contains("skin.gel,skin,\"Skin, gel time\",25,25,25,min\n");
    }

    @Test void aLabelThatASpreadsheetWouldRunIsMadeHarmless() { // spreadsheets run cells that begin with = + - @
        Estimate estimate = Estimate.of(Plans.single("x", "=HYPERLINK(\"http://x\")", 1, OptionalDouble.empty()), "r", java.util.List.of());
        assertThat(new CsvReport().print(estimate)).contains("\"'=HYPERLINK(\"\"http://x\"\")\"");
    }

    @Test void aHollowIsANumberAndKeepsItsSign() {
        assertThat(new CsvReport().print(Plans.estimate())).contains("bay.S1-S2.crown,shape,\"Crown, bay S1 to S2\",-0.0004,-0.0004,-0.0004,m\n");
    }

    @Test void drawsAddTheirShares() {
        String csv = new CsvReport().print(Plans.drawn());
        assertThat(csv).startsWith("id,stage,label,value,low,high,unit,p10,p50,p90\nshape.length,shape,Length,0.5,0.5,0.5,m,0.5,0.5,0.5\n");
        assertThat(csv.lines()).allSatisfy(line -> assertThat(line.replaceAll("\"[^\"]*\"", "").chars().filter(c -> c == ',')).hasSize(9));
    }

    @Test void thePiecesAreATableOfTheirOwn() {
        assertThat(new CsvReport().pieces(Plans.estimate())).startsWith("piece,ply,mat,where,width,length,roll,cut,along,across,laminate\n"
                + "1,1,Csm450,bay S1 to S2,1.25,0.55,1,1,0,0,skin\n");
    }
}
