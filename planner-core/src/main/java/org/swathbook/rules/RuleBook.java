package org.swathbook.rules;

import java.util.List;
import java.util.Optional;
import org.swathbook.catalog.Slug;
import org.swathbook.rules.label.AnnualCapRule;
import org.swathbook.rules.label.ApplicationCountRule;
import org.swathbook.rules.label.CatalogStaleRule;
import org.swathbook.rules.label.CropNotListedRule;
import org.swathbook.rules.label.IncorporationNeededRule;
import org.swathbook.rules.label.LabelConditionRule;
import org.swathbook.rules.label.NotVerifiedRule;
import org.swathbook.rules.label.RateAboveUseRule;
import org.swathbook.rules.label.RateBelowUseRule;
import org.swathbook.rules.label.RecordIncompleteRule;
import org.swathbook.rules.label.RegistrationStatusRule;
import org.swathbook.rules.label.RestrictedUseRule;
import org.swathbook.rules.label.SetbackWaterRule;
import org.swathbook.rules.label.SoilLimitRule;
import org.swathbook.rules.label.TraitNeededRule;
import org.swathbook.rules.label.ValueFromMemoryRule;
import org.swathbook.rules.mixture.AdjuvantNeededRule;
import org.swathbook.rules.mixture.AdjuvantRefusedRule;
import org.swathbook.rules.mixture.AntagonismRule;
import org.swathbook.rules.mixture.BelowFullRateRule;
import org.swathbook.rules.mixture.CarrierVolumeRule;
import org.swathbook.rules.mixture.CropInjuryStackRule;
import org.swathbook.rules.mixture.DropletClassRule;
import org.swathbook.rules.mixture.InsecticidePartnerRule;
import org.swathbook.rules.mixture.JarTestRule;
import org.swathbook.rules.mixture.MixingOrderRule;
import org.swathbook.rules.mixture.PartnerRefusedRule;
import org.swathbook.rules.mixture.ResistantBiotypeRule;
import org.swathbook.rules.mixture.SameActiveTwiceRule;
import org.swathbook.rules.mixture.SingleSiteRule;
import org.swathbook.rules.mixture.TankResidueRule;
import org.swathbook.rules.stewardship.DependsOnOneSiteRule;
import org.swathbook.rules.stewardship.LateFirstPassRule;
import org.swathbook.rules.stewardship.LayerGapRule;
import org.swathbook.rules.stewardship.LayerOverlapRule;
import org.swathbook.rules.stewardship.NoResidualRule;
import org.swathbook.rules.stewardship.SiteRepeatedRule;
import org.swathbook.rules.stewardship.SurvivorsRule;
import org.swathbook.rules.stewardship.WeedNotCoveredRule;
import org.swathbook.rules.stewardship.WindowConfidenceRule;
import org.swathbook.rules.timing.BurndownMissingRule;
import org.swathbook.rules.timing.CutoffDateRule;
import org.swathbook.rules.timing.GrazingFeedRule;
import org.swathbook.rules.timing.HarvestIntervalRule;
import org.swathbook.rules.timing.NextCropIntervalRule;
import org.swathbook.rules.timing.NoActivatingRainRule;
import org.swathbook.rules.timing.PlantingIntervalRule;
import org.swathbook.rules.timing.RepeatIntervalRule;
import org.swathbook.rules.timing.ReplantCropRule;
import org.swathbook.rules.timing.StageWindowRule;
import org.swathbook.rules.timing.WeedTooTallRule;
import org.swathbook.rules.weather.ColdDaysRule;
import org.swathbook.rules.weather.InversionRule;
import org.swathbook.rules.weather.RainTooSoonRule;
import org.swathbook.rules.weather.SensitiveNeighborRule;
import org.swathbook.rules.weather.TemperatureRule;
import org.swathbook.rules.weather.TimeOfDayRule;
import org.swathbook.rules.weather.WaterQualityRule;
import org.swathbook.rules.weather.WindRule;

/** Every rule there is, once, in the order of their ids. */
public final class RuleBook {
  private static final NextCropIntervalRule NEXT_CROP = new NextCropIntervalRule();

  private static final List<Rule> ALL =
      List.of(
          new AdjuvantNeededRule(),
          new AdjuvantRefusedRule(),
          new AnnualCapRule(),
          new AntagonismRule(),
          new ApplicationCountRule(),
          new BelowFullRateRule(),
          new BurndownMissingRule(),
          new CarrierVolumeRule(),
          new CatalogStaleRule(),
          new ColdDaysRule(),
          new CropInjuryStackRule(),
          new CropNotListedRule(),
          new CutoffDateRule(),
          new DependsOnOneSiteRule(),
          new DropletClassRule(),
          new GrazingFeedRule(),
          new HarvestIntervalRule(),
          new IncorporationNeededRule(),
          new InsecticidePartnerRule(),
          new InversionRule(),
          new JarTestRule(),
          new LabelConditionRule(),
          new LateFirstPassRule(),
          new LayerGapRule(),
          new LayerOverlapRule(),
          new MixingOrderRule(),
          NEXT_CROP,
          new NoActivatingRainRule(),
          new NoResidualRule(),
          new NotVerifiedRule(),
          new PartnerRefusedRule(),
          new PlantingIntervalRule(),
          new RainTooSoonRule(),
          new RateAboveUseRule(),
          new RateBelowUseRule(),
          new RecordIncompleteRule(),
          new RegistrationStatusRule(),
          new RepeatIntervalRule(),
          new ReplantCropRule(),
          new ResistantBiotypeRule(),
          new RestrictedUseRule(),
          new SameActiveTwiceRule(),
          new SensitiveNeighborRule(),
          new SetbackWaterRule(),
          new SingleSiteRule(),
          new SiteRepeatedRule(),
          new SoilLimitRule(),
          new StageWindowRule(),
          new SurvivorsRule(),
          new TankResidueRule(),
          new TemperatureRule(),
          new TimeOfDayRule(),
          new TraitNeededRule(),
          new ValueFromMemoryRule(),
          new WaterQualityRule(),
          new WeedNotCoveredRule(),
          new WeedTooTallRule(),
          new WindRule(),
          new WindowConfidenceRule());

  private RuleBook() {}

  public static List<Rule> all() {
    return ALL;
  }

  /** By any spelling that slugs alike. */
  public static Optional<Rule> find(String typed) {
    String slug = Slug.of(typed);
    return ALL.stream().filter(r -> r.id().value().equals(slug)).findFirst();
  }

  /** The rules of one scope, in the order of their ids. */
  public static <R extends Rule> List<R> ofScope(Class<R> scope) {
    return ALL.stream().filter(scope::isInstance).map(scope::cast).toList();
  }

  /** The one rule that also reads the journal against the crop itself. */
  public static NextCropIntervalRule nextCrop() {
    return NEXT_CROP;
  }

  /** A page for every rule, in the order of their ids. */
  public static List<RulePage> pages() {
    return ALL.stream().map(RulePage::of).toList();
  }
}
