package spoonfall.web.wire;

import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.List;
import java.util.function.Function;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.Kitchens;

/** Which pan a request is about: the one in its path, else the first. */
public final class AskedPan implements Function<Context, Kitchen> {
    /** The paths under which every call on a pan is found: for the first pan, and for each by its name. */
    public static final List<String> BASES = List.of("/api", "/api/pans/{pan}");

    private final Kitchens kitchens;

    /** One of these pans. */
    public AskedPan(Kitchens kitchens) {
        this.kitchens = kitchens;
    }

    /**
     * The pan's kitchen.
     *
     * @throws NotFoundResponse if there is no pan of that name
     */
    @Override
    public Kitchen apply(Context ctx) {
        String pan = ctx.pathParamMap().get("pan");
        if (pan == null) {
            return kitchens.first();
        }
        return kitchens.named(pan).orElseThrow(() -> new NotFoundResponse(unknown(kitchens, pan)));
    }

    /** Says that there is no pan of that name, and which there are. */
    public static String unknown(Kitchens kitchens, String pan) {
        String asked = pan.length() > 40 ? pan.substring(0, 40) : pan;
        return "no pan is called \"" + asked + "\"; there is " + String.join(", ", kitchens.names());
    }
}
