package caryatid.format;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * How the constants of a choice are spelled in files.
 *
 * @param constants every constant
 * @param spelling each constant's word; a switch without a default, so that the compiler asks for
 *     the word of a new constant
 */
record Spellings<E>(List<E> constants, Function<E, String> spelling) {

  static <E> Spellings<E> of(E[] constants, Function<E, String> spelling) {
    return new Spellings<>(List.of(constants), spelling);
  }

  String of(E constant) {
    return spelling.apply(constant);
  }

  Optional<E> find(String word) {
    return constants.stream().filter(each -> of(each).equals(word)).findFirst();
  }
}
