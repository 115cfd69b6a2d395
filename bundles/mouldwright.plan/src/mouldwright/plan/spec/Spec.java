package mouldwright.plan.spec;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** A plug's spec in SI, with the origin of every figure: all that the stages know of the text.
 *  @param name     the plug's name
 *  @param title    in words
 *  @param shop     where it is built
 *  @param body     its shape
 *  @param part     the laminate the mould is for
 *  @param frame    bulkheads; a block that is absent leaves its stage out of the plan
 *  @param fill     foam
 *  @param carve    carving; absent, its defaults hold
 *  @param skin     skin
 *  @param finish   surfacing
 *  @param mould    mould
 *  @param accepted findings accepted in the text
 *  @param surveys  what was built
 *  @param tacit    what it was read with though the text is silent
 *  @param origin   where the plug is declared */
public record Spec(String name, Optional<String> title, Workshop shop, Body body, Optional<Schedule> part,
        Optional<Frame> frame, Optional<Fill> fill, Optional<Carve> carve, Optional<Skin> skin,
        Optional<Finish> finish, Optional<Mould> mould, List<Acceptance> accepted, List<Survey> surveys,
        List<Tacit> tacit, Origin origin) {

    /** Copies its lists. */
    public Spec {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(shop, "shop");
        Objects.requireNonNull(body, "body");
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(frame, "frame");
        Objects.requireNonNull(fill, "fill");
        Objects.requireNonNull(carve, "carve");
        Objects.requireNonNull(skin, "skin");
        Objects.requireNonNull(finish, "finish");
        Objects.requireNonNull(mould, "mould");
        accepted = List.copyOf(accepted);
        surveys = List.copyOf(surveys);
        tacit = List.copyOf(tacit);
        Objects.requireNonNull(origin, "origin");
    }

    /** A spec that was read with nothing tacit. */
    public Spec(String name, Optional<String> title, Workshop shop, Body body, Optional<Schedule> part, Optional<Frame> frame, Optional<Fill> fill,
            Optional<Carve> carve, Optional<Skin> skin, Optional<Finish> finish, Optional<Mould> mould, List<Acceptance> accepted,
            List<Survey> surveys, Origin origin) {
        this(name, title, shop, body, part, frame, fill, carve, skin, finish, mould, accepted, surveys, List.of(), origin);
    }
}
