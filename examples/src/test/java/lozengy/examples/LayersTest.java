package lozengy.examples;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Who may know whom: modules, and the packages within each. */
class LayersTest {

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("lozengy");

  /**
   * The packages of model, those that know nothing first; packages on one line know each other not.
   */
  private static final List<List<String>> MODEL =
      List.of(
          List.of("unit", "colour", "input", "stitch"),
          List.of("layout"),
          List.of("brief"),
          List.of("blanket"),
          List.of("check", "score"),
          List.of("wording"),
          List.of("reading"),
          List.of("yarn", "card"),
          List.of("arrangement"),
          List.of("making"),
          List.of("compare", "progress"));

  private static void holds(ArchRule rule) {
    rule.check(CLASSES);
  }

  @Test
  void packagesOfModelAreALadder() {
    List<String> all = new ArrayList<>();
    for (List<String> step : MODEL) {
      for (String one : step) {
        String[] known = all.stream().map(LayersTest::model).toArray(String[]::new);
        Set<String> unknown =
            classes(model(one)).stream()
                .flatMap(each -> each.getDirectDependenciesFromSelf().stream())
                .map(each -> each.getTargetClass().getBaseComponentType().getPackageName())
                .filter(each -> each.startsWith("lozengy.") && !each.equals(model(one)))
                .filter(each -> !List.of(known).contains(each))
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(Set.of(), unknown, model(one) + " looks up to these");
      }
      all.addAll(step);
    }
    Set<String> found =
        CLASSES.stream()
            .map(JavaClass::getPackageName)
            .filter(each -> each.startsWith("lozengy.model."))
            .collect(Collectors.toSet());
    assertEquals(all.stream().map(LayersTest::model).collect(Collectors.toSet()), found);
  }

  private static String model(String name) {
    return "lozengy.model." + name;
  }

  private static List<JavaClass> classes(String name) {
    return CLASSES.stream().filter(each -> each.getPackageName().equals(name)).toList();
  }

  @Test
  void noPackagesFormACycle() {
    holds(slices().matching("lozengy.(**)").should().beFreeOfCycles());
  }

  @Test
  void modelKnowsTheFilesAndGraphsAlone() {
    holds(
        noClasses()
            .that(resideInAPackage("lozengy.model.."))
            .should()
            .dependOnClassesThat()
            .resideOutsideOfPackages(
                "lozengy.model..",
                "java..",
                "com.fasterxml.jackson.core..",
                "org.yaml.snakeyaml..",
                "org.jgrapht.."));
  }

  @Test
  void solverKnowsModelAndItsEngines() {
    holds(
        noClasses()
            .that(resideInAPackage("lozengy.solver.."))
            .should()
            .dependOnClassesThat()
            .resideOutsideOfPackages(
                "lozengy.solver..",
                "lozengy.model..",
                "java..",
                "org.chocosolver..",
                "org.jgrapht.."));
  }

  @Test
  void reportsKnowNoCommandLine() {
    holds(
        noClasses()
            .that(resideInAPackage("lozengy.report.."))
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("lozengy.cli..", "picocli.."));
  }

  @Test
  void belowTheCommandLineNothingPrints() {
    for (String stream : List.of("out", "err", "in")) {
      holds(
          noClasses()
              .that()
              .resideInAnyPackage("lozengy.model..", "lozengy.solver..", "lozengy.report..")
              .should()
              .accessField(System.class, stream));
    }
    holds(
        noClasses()
            .that()
            .resideInAnyPackage("lozengy.model..", "lozengy.solver..", "lozengy.report..")
            .should()
            .callMethod(Throwable.class, "printStackTrace"));
  }

  @Test
  void onlyMainEndsTheProgram() {
    holds(
        noClasses()
            .that()
            .doNotHaveFullyQualifiedName("lozengy.cli.Main")
            .should()
            .callMethod(System.class, "exit", int.class));
    holds(
        noClasses()
            .that()
            .doNotHaveFullyQualifiedName("lozengy.cli.Interrupt")
            .should()
            .callMethod(Runtime.class, "halt", int.class));
  }

  /** Rules that judge no class would hold whatever is written. */
  @Test
  void classesOfEveryModuleAreJudged() {
    for (String module : List.of("model.check", "solver.search", "report.page", "cli.command")) {
      assertTrue(classes("lozengy." + module).size() > 5, module);
    }
  }
}
