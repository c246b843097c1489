package org.mantice.example.firstrule;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

class FirstRuleUsesPublicPackagesTest {
    private final JavaClasses pack = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("org.mantice.example.firstrule");

    @Test
    void onlyThePackagesForRuleAuthorsAreUsed() {
        classes()
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage(
                        "java.lang..",
                        "java.util..",
                        "org.mantice.rule",
                        "org.mantice.instrument",
                        "org.mantice.player",
                        "org.mantice.tune",
                        "org.mantice.example.firstrule")
                .check(pack);
    }

    @Test
    void theTestAboveSeesTheRuleAndItsPack() {
        assertThat(pack).hasSizeGreaterThanOrEqualTo(2);
    }
}
