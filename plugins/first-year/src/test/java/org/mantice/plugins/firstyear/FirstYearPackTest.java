package org.mantice.plugins.firstyear;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleContract;

class FirstYearPackTest {
    private final JavaClasses pack = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("org.mantice.plugins.firstyear");

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
                        "org.mantice.plugins.firstyear")
                .check(pack);
    }

    @Test
    void theTestAboveSeesThePackAndItsRules() {
        assertThat(pack).hasSizeGreaterThanOrEqualTo(7);
    }

    @Test
    void everyRuleOfTheFolderIsInThePack() {
        Set<String> written = pack.stream()
                .filter(type -> type.isAssignableTo(Rule.class))
                .map(type -> type.getSimpleName())
                .collect(Collectors.toSet());

        assertThat(new FirstYearPack().rules())
                .extracting(rule -> rule.getClass().getSimpleName())
                .containsExactlyInAnyOrderElementsOf(written);
    }

    @Test
    void everyRuleIsHeldToTheContract() {
        assertThat(new FirstYearPack().rules())
                .allSatisfy(rule -> assertThat(Class.forName(rule.getClass().getName() + "Test"))
                        .isAssignableTo(RuleContract.class));
    }

    @Test
    void thePageDescribesEveryRule() throws IOException {
        String page = Files.readString(Path.of("README.md"));

        assertThat(new FirstYearPack().rules())
                .allSatisfy(rule -> assertThat(page).contains("`" + rule.info().id() + "`"));
    }
}
