package org.swathbook.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SmallTypesTest {

  @ParameterizedTest(name = "site {0} is {1}")
  @CsvSource({
    // Old numbers of the harmonised HRAC/WSSA list of 2020, from memory.
    "7, 5",
    "8, 15",
    "16, 15",
    "17, 0",
    "20, 29",
    "21, 29",
    "5, 5",
    "9, 9",
    "27, 27",
    "' 14 ', 14",
  })
  void oldSiteNumbersMeanTheCurrentOnes(String written, int number) {
    assertThat(Site.find(written)).contains(new Site(number));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "A", "-1", "41", "100", "9.0", "K3"})
  void whatIsNoSiteIsNotFound(String text) {
    assertThat(Site.find(text)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "'2,4-D choline', 2-4-d-choline",
    "S-metolachlor, s-metolachlor",
    "glyphosate-4.5SL, glyphosate-4.5sl",
    "'  Palmer   amaranth ', palmer-amaranth",
    "'--', ''",
  })
  void namesBecomeIds(String name, String id) {
    assertThat(Slug.of(name)).isEqualTo(id);
  }

  @Test
  void aValueAtALimitIsAllowedUnlessTheEndIsOut() {
    assertThat(Limit.atMost(12).allows(12)).isTrue();
    assertThat(Limit.atMost(0.3).allows(0.1 + 0.2)).isTrue();
    assertThat(Limit.below(12).allows(12)).isFalse();
    assertThat(Limit.below(0.3).allows(0.1 + 0.2)).isFalse();
    assertThat(Limit.atLeast(3).allows(3)).isTrue();
    assertThat(Limit.above(3).allows(3)).isFalse();
    assertThat(Limit.above(3).allows(3.01)).isTrue();
  }

  @Test
  void theThreeAnswersAreNeverTakenForEachOther() {
    Stated<Integer> value = Stated.value(5, Source.FROM_MEMORY);
    Stated<Integer> none = Stated.none(Source.FROM_MEMORY);
    Stated<Integer> unknown = Stated.unknown("cap");
    for (Stated<Integer> s : List.of(value, none, unknown)) {
      String answer = s.match((v, from) -> "value " + v, from -> "none", what -> "no " + what);
      assertThat(answer).isEqualTo(s == value ? "value 5" : s == none ? "none" : "no cap");
    }
    assertThat(value.find()).contains(5);
    assertThat(none.find()).isEmpty();
    assertThat(none.isUnknown()).isFalse();
    assertThat(unknown.isNone()).isFalse();
    assertThat(unknown.findSource()).isEmpty();
  }

  @Test
  void texturesFallIntoThreeGroups() {
    assertThat(SoilTexture.find("Sandy-Loam").map(SoilTexture::group))
        .contains(SoilTexture.Group.COARSE);
    assertThat(SoilTexture.find("sandy clay loam").map(SoilTexture::group))
        .contains(SoilTexture.Group.MEDIUM);
    assertThat(SoilTexture.find("silty clay").map(SoilTexture::group))
        .contains(SoilTexture.Group.FINE);
    assertThat(SoilTexture.find("peat")).isEmpty();
  }

  @Test
  void partnersAreAllowedOrRefusedByAList() {
    IngredientId one = new IngredientId("one");
    IngredientId other = new IngredientId("other");
    assertThat(new TankTerms.PartnerList(true, Set.of(one)).allows(one)).isTrue();
    assertThat(new TankTerms.PartnerList(true, Set.of(one)).allows(other)).isFalse();
    assertThat(new TankTerms.PartnerList(false, Set.of(one)).allows(one)).isFalse();
    assertThat(new TankTerms.PartnerList(false, Set.of(one)).allows(other)).isTrue();
  }

  @Test
  void setsKeepTheOrderInWhichTheyWereGiven() {
    Set<IngredientId> given = new LinkedHashSet<>();
    IntStream.range(0, 40).forEach(i -> given.add(new IngredientId("x" + (i * 7) % 40)));
    assertThat(new TankTerms.PartnerList(true, given).listed()).containsExactlyElementsOf(given);
  }

  @Test
  void windowsPrintAsLabelsSpeak() {
    assertThat(
            new Window(
                Optional.of(new TimePoint.FromPlanting(-30)),
                Optional.of(new TimePoint.FromPlanting(3)),
                Optional.of(new TimePoint.AtStage("emergence"))))
        .hasToString("from 30 days before planting through 3 days after planting before emergence");
  }
}
