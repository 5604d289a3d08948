package caryatid.entry.form;

import caryatid.entry.Named;
import caryatid.remark.Coded;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;

/** Answers as they are filled in, one after the other; what is not said is left out. */
final class Filling {
  private final Map<String, Answers.Value> values = new LinkedHashMap<>();

  Answers answers() {
    return new Answers(values);
  }

  private Filling put(String key, Optional<? extends Answers.Value> value) {
    value.ifPresent(v -> values.put(key, v));
    return this;
  }

  Filling words(String key, Optional<String> text) {
    return put(key, text.map(Answers.Value.Words::new));
  }

  Filling number(String key, Optional<BigDecimal> number) {
    return put(key, number.map(Answers.Value.Amount::new));
  }

  Filling whole(String key, OptionalInt number) {
    return number.isPresent()
        ? number(key, Optional.of(BigDecimal.valueOf(number.getAsInt())))
        : this;
  }

  Filling yesNo(String key, Optional<Boolean> yes) {
    return put(key, yes.map(Answers.Value.YesNo::new));
  }

  <E extends Enum<E>> Filling choice(String key, Choices<E> of, Optional<E> constant) {
    return words(key, constant.map(of::code));
  }

  <C extends Coded> Filling name(String key, Optional<Named<C>> name) {
    return put(
        key, name.map(n -> new Answers.Value.Name(n.code().map(Coded.class::cast), n.text())));
  }

  <R> Filling rows(String key, List<R> rows, Function<R, Filling> row) {
    List<Answers> all = rows.stream().map(r -> row.apply(r).answers()).toList();
    return put(key, all.isEmpty() ? Optional.empty() : Optional.of(new Answers.Value.Rows(all)));
  }
}
