package caryatid.plate;

import caryatid.geometry.Side;
import java.util.OptionalDouble;

/**
 * A person on the plate who faces as wearers do.
 *
 * @param standing where the load is while the person stands as wearers do
 * @param forward where it is while the person leans forward
 * @param oneFoot where it is while one foot alone bears the person
 * @param foot which foot that is
 * @param kg the person's mass, kg, where it is known
 */
public record PersonMoves(
    ShownLoad standing, ShownLoad forward, ShownLoad oneFoot, Side foot, OptionalDouble kg) {}
