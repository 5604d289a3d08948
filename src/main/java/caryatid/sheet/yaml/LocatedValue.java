package caryatid.sheet.yaml;

import caryatid.remark.Place;

/**
 * A value and where it stands.
 *
 * @param value the value
 * @param place where it was written
 */
public record LocatedValue<T>(T value, Place place) {}
