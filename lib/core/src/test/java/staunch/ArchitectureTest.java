package staunch;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Holds the stack of packages: each names only those below it, and what each must never know. */
class ArchitectureTest {
    private static final JavaClasses CORE = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("staunch");

    /** What each package may name, besides itself and the outside. */
    private static final Map<String, List<String>> STACK = new TreeMap<>(Map.of(
            "units", List.of(),
            "fluid", List.of("units"),
            "well", List.of("units"),
            "earth", List.of("units", "well"),
            "limit", List.of("units", "fluid", "well"),
            "influx", List.of("units", "fluid", "well", "earth"),
            "control", List.of("units", "fluid", "well", "earth", "influx"),
            "envelope", List.of("units", "fluid", "well", "earth", "limit", "influx", "control"),
            "uncertainty", List.of("units"),
            "design",
                    List.of(
                            "units",
                            "fluid",
                            "well",
                            "earth",
                            "limit",
                            "influx",
                            "control",
                            "envelope",
                            "uncertainty")));

    private static String all(String name) {
        return "staunch." + name + "..";
    }

    @TestFactory
    Stream<DynamicTest> eachPackageNamesOnlyThoseBelowIt() {
        return STACK.entrySet().stream().map(entry -> {
            String[] forbidden = STACK.keySet().stream()
                    .filter(other ->
                            !other.equals(entry.getKey()) && !entry.getValue().contains(other))
                    .map(ArchitectureTest::all)
                    .toArray(String[]::new);
            ArchRule rule = noClasses()
                    .that()
                    .resideInAPackage(all(entry.getKey()))
                    .should()
                    .dependOnClassesThat()
                    .resideInAnyPackage(forbidden)
                    .allowEmptyShould(true);
            return DynamicTest.dynamicTest(entry.getKey(), () -> rule.check(CORE));
        });
    }

    @Test
    void everyPackageHasItsPlaceInTheStack() {
        classes()
                .should()
                .resideInAnyPackage(
                        STACK.keySet().stream().map(ArchitectureTest::all).toArray(String[]::new))
                .check(CORE);
    }

    @Test
    void packagesFormNoCycle() {
        slices().matching("staunch.(*)..").should().beFreeOfCycles().check(CORE);
    }

    @Test
    void coreSeesTheJdkMathsAndUnitsOnly() {
        classes()
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage(
                        "staunch..",
                        "java..",
                        "javax.measure..",
                        "tech.units..",
                        "org.apache.commons.math3..",
                        "org.apache.commons.numbers..",
                        "org.apache.commons.rng..",
                        "org.apache.commons.statistics..")
                .check(CORE);
    }

    @Test
    void coreDrawsNothingAndReadsNoFile() {
        noClasses()
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.awt..", "javax.swing..", "java.nio.file..", "java.net..", "java.sql..")
                .check(CORE);
        noClasses()
                .should()
                .dependOnClassesThat()
                .haveNameMatching("java\\.io\\.(File|RandomAccess|InputStream|OutputStream|Reader|Writer|Print).*")
                .check(CORE);
    }

    @Test
    void nothingChangesWithTime() {
        noClasses()
                .should()
                .dependOnClassesThat()
                .haveNameMatching("java\\.util\\.Random|java\\.time\\.(Clock|Instant|LocalDateTime|ZonedDateTime)")
                .check(CORE);
    }

    @Test
    void staticFieldsAreFinal() {
        fields().that().areStatic().should().beFinal().check(CORE);
    }

    @Test
    void publicClassesCannotBeSubclassedFromOutside() {
        classes()
                .that()
                .arePublic()
                .and()
                .areNotInterfaces()
                .and()
                .areNotEnums()
                .and()
                .doNotHaveModifier(JavaModifier.ABSTRACT)
                .and()
                .areTopLevelClasses()
                .should()
                .haveModifier(JavaModifier.FINAL)
                .check(CORE);
    }
}
