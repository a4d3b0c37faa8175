package staunch.present;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "staunch", importOptions = ImportOption.DoNotIncludeTests.class)
class PresentLayersTest {
    @ArchTest
    static final ArchRule TABLESAW_LIVES_IN_TABLE = noClasses()
            .that()
            .resideOutsideOfPackage("staunch.table..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("tech.tablesaw..");

    @ArchTest
    static final ArchRule XCHART_LIVES_IN_CHART = noClasses()
            .that()
            .resideOutsideOfPackage("staunch.chart..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.knowm.xchart..", "de.erichseifert..", "java.awt..");

    @ArchTest
    static final ArchRule TEMPLATES_AND_PDF_LIVE_IN_REPORT = noClasses()
            .that()
            .resideOutsideOfPackage("staunch.report..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("freemarker..", "com.openhtmltopdf..", "org.apache.pdfbox..");

    @ArchTest
    static final ArchRule TABLES_AND_CHARTS_STAND_SIDE_BY_SIDE = noClasses()
            .that()
            .resideInAPackage("staunch.table..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("staunch.chart..", "staunch.report..");

    @ArchTest
    static final ArchRule CHARTS_KNOW_NO_TABLES = noClasses()
            .that()
            .resideInAPackage("staunch.chart..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("staunch.table..", "staunch.report..");

    @ArchTest
    static final ArchRule ONLY_REPORT_TOUCHES_FILES = noClasses()
            .that()
            .resideInAnyPackage("staunch.table..", "staunch.chart..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("java.nio.file..");

    @ArchTest
    static final ArchRule PRESENTATION_COMPUTES_NOTHING = noClasses()
            .that()
            .resideInAnyPackage("staunch.table..", "staunch.chart..", "staunch.report..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("staunch.influx..", "staunch.uncertainty..", "staunch.ingest..", "staunch.kernel..");
}
