/**
 * YAML read by walking its nodes: keys, sections and single values with their line and column, and
 * every problem of a file at once. Entry points: {@link caryatid.sheet.yaml.Section} where the keys
 * are known, {@link caryatid.sheet.yaml.InputValueReader} where they are not. May use {@code
 * remark} and the bytes of {@code recording.model}; the YAML library.
 */
package caryatid.sheet.yaml;
