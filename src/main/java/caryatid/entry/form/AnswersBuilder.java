package caryatid.entry.form;

import caryatid.entry.TermOrText;
import caryatid.remark.Coded;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;

/** Builds answers one after the other; empty values are left out. */
final class AnswersBuilder {
  private final Map<String, Answers.Value> values = new LinkedHashMap<>();

  Answers answers() {
    return new Answers(values);
  }

  private AnswersBuilder put(String key, Optional<? extends Answers.Value> value) {
    value.ifPresent(v -> values.put(key, v));
    return this;
  }

  AnswersBuilder words(String key, Optional<String> text) {
    return put(key, text.map(Answers.Value.Words::new));
  }

  AnswersBuilder number(String key, Optional<BigDecimal> number) {
    return put(key, number.map(Answers.Value.Amount::new));
  }

  AnswersBuilder whole(String key, OptionalInt number) {
    return number.isPresent()
        ? number(key, Optional.of(BigDecimal.valueOf(number.getAsInt())))
        : this;
  }

  AnswersBuilder yesNo(String key, Optional<Boolean> yes) {
    return put(key, yes.map(Answers.Value.YesNo::new));
  }

  <E extends Enum<E>> AnswersBuilder choice(String key, Choices<E> of, Optional<E> constant) {
    return words(key, constant.map(of::code));
  }

  <C extends Coded> AnswersBuilder name(String key, Optional<TermOrText<C>> name) {
    return put(
        key, name.map(n -> new Answers.Value.Name(n.code().map(Coded.class::cast), n.text())));
  }

  <R> AnswersBuilder rows(String key, List<R> rows, Function<R, AnswersBuilder> row) {
    List<Answers> all = rows.stream().map(r -> row.apply(r).answers()).toList();
    return put(key, all.isEmpty() ? Optional.empty() : Optional.of(new Answers.Value.Rows(all)));
  }
}
