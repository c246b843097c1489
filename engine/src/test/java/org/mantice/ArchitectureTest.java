package org.mantice;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

class ArchitectureTest {
    private static final JavaClasses ENGINE = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("org.mantice");

    @Test
    void engineIsSeenWhole() {
        assertThat(ENGINE.size()).isGreaterThan(150);
    }

    @Test
    void engineKnowsNoWindow() {
        noClasses()
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.awt..", "javax.swing..", "javax.imageio..", "javax.print..", "java.beans..")
                .check(ENGINE);
    }

    @Test
    void packagesHaveNoCycles() {
        slices().matching("org.mantice.(**)").should().beFreeOfCycles().check(ENGINE);
    }

    @Test
    void dependenciesPointOneWay() {
        layeredArchitecture()
                .consideringOnlyDependenciesInLayers()
                .withOptionalLayers(true)
                .layer("fault")
                .definedBy("org.mantice.fault")
                .layer("tune")
                .definedBy("org.mantice.tune")
                .layer("instrument")
                .definedBy("org.mantice.instrument")
                .layer("player")
                .definedBy("org.mantice.player")
                .layer("reading")
                .definedBy("org.mantice.reading..")
                .layer("performance")
                .definedBy("org.mantice.performance..")
                .layer("harmony")
                .definedBy("org.mantice.harmony")
                .layer("editing")
                .definedBy("org.mantice.editing")
                .layer("rule")
                .definedBy("org.mantice.rule..")
                .layer("search")
                .definedBy("org.mantice.search..")
                .layer("plan")
                .definedBy("org.mantice.plan")
                .layer("layer")
                .definedBy("org.mantice.layer..")
                .layer("pattern")
                .definedBy("org.mantice.pattern")
                .layer("json")
                .definedBy("org.mantice.json")
                .layer("plugin")
                .definedBy("org.mantice.plugin")
                .layer("file")
                .definedBy("org.mantice.file")
                .layer("writing")
                .definedBy("org.mantice.writing")
                .layer("front")
                .definedBy("org.mantice")
                .whereLayer("fault")
                .mayNotAccessAnyLayer()
                .whereLayer("tune")
                .mayNotAccessAnyLayer()
                .whereLayer("search")
                .mayNotAccessAnyLayer()
                .whereLayer("instrument")
                .mayOnlyAccessLayers("tune")
                .whereLayer("player")
                .mayNotAccessAnyLayer()
                .whereLayer("reading")
                .mayOnlyAccessLayers("tune", "fault")
                .whereLayer("performance")
                .mayOnlyAccessLayers("tune", "fault", "pattern")
                .whereLayer("harmony")
                .mayOnlyAccessLayers("tune")
                .whereLayer("editing")
                .mayOnlyAccessLayers("tune", "reading", "harmony", "performance", "fault")
                .whereLayer("rule")
                .mayOnlyAccessLayers("tune", "instrument", "player")
                .whereLayer("plan")
                .mayOnlyAccessLayers("tune", "instrument", "player", "performance", "rule")
                .whereLayer("layer")
                .mayOnlyAccessLayers(
                        "tune", "instrument", "player", "pattern", "performance", "rule", "plan", "search", "fault")
                .whereLayer("pattern")
                .mayOnlyAccessLayers("tune", "fault", "json")
                .whereLayer("json")
                .mayOnlyAccessLayers("fault")
                .whereLayer("plugin")
                .mayOnlyAccessLayers("rule", "tune", "instrument", "player")
                .whereLayer("writing")
                .mayOnlyAccessLayers("tune", "instrument", "performance", "plan", "fault")
                .whereLayer("front")
                .mayNotBeAccessedByAnyLayer()
                .check(ENGINE);
    }

    @Test
    void searchKnowsNoMusic() {
        noClasses()
                .that()
                .resideInAPackage("org.mantice.search..")
                .should()
                .dependOnClassesThat()
                .resideOutsideOfPackages("java..", "org.mantice.search..")
                .check(ENGINE);
    }
}
