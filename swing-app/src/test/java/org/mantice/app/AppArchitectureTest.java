package org.mantice.app;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

class AppArchitectureTest {
    private static final JavaClasses APP = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("org.mantice.app");

    @Test
    void appIsSeenWhole() {
        assertThat(APP.size()).isGreaterThan(60);
    }

    @Test
    void onlyViewsWindowAndLooksKnowSwing() {
        noClasses()
                .that()
                .resideOutsideOfPackages("org.mantice.app.view..", "org.mantice.app.window..", "org.mantice.app.look..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("javax.swing..", "com.formdev..")
                .check(APP);
    }

    @Test
    void onlyTheSheetPaintsWithoutSwing() {
        noClasses()
                .that()
                .resideInAnyPackage(
                        "org.mantice.app.model..",
                        "org.mantice.app.work..",
                        "org.mantice.app.words..",
                        "org.mantice.app.text..",
                        "org.mantice.app.command..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.awt..")
                .check(APP);
    }

    @Test
    void theSheetKnowsNoModelAndNoWindow() {
        noClasses()
                .that()
                .resideInAPackage("org.mantice.app.sheet..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "org.mantice.app.model..",
                        "org.mantice.app.view..",
                        "org.mantice.app.window..",
                        "org.mantice.app.work..",
                        "org.mantice.app.look..")
                .check(APP);
    }

    @Test
    void viewsKnowNoFrame() {
        noClasses()
                .that()
                .resideInAPackage("org.mantice.app.view..")
                .should()
                .dependOnClassesThat()
                .haveFullyQualifiedName("javax.swing.JFrame")
                .orShould()
                .dependOnClassesThat()
                .resideInAPackage("org.mantice.app.window..")
                .check(APP);
    }

    @Test
    void packagesHaveNoCycles() {
        slices().matching("org.mantice.app.(*)..").should().beFreeOfCycles().check(APP);
    }
}
