package mouldwright.plan.stage;

import java.util.List;
import mouldwright.geometry.loft.Bare;
import mouldwright.geometry.loft.GirthBand;
import mouldwright.geometry.loft.GirthPlace;
import mouldwright.plan.ledger.Measurement;
import mouldwright.geometry.measure.Measured;
import mouldwright.plan.spec.Band;
import mouldwright.plan.spec.Place;

/** Says a spec's places and a measure in the geometry's words and back. */
final class Places {

    private Places() { }

    static GirthPlace of(Place place) {
        return switch (place) {
            case Place.OnLine(String line) -> new GirthPlace.OnLine(line);
            case Place.AtShare(double share) -> new GirthPlace.AtShare(share);
        };
    }

    static GirthBand of(Band band) {
        return new GirthBand(of(band.from()), of(band.to()));
    }

    static Bare bare(List<Band> bands) {
        return bands.isEmpty() ? Bare.NONE : new Bare(bands.stream().map(Places::of).toList());
    }

    static Measurement measured(Measured measured, String how) {
        return new Measurement(measured.value(), measured.errorEstimate(), how);
    }

    /** A measure without an estimate of its error: exact but for rounding. */
    static Measurement exact(double value, String how) {
        return new Measurement(value, 0, how);
    }
}
