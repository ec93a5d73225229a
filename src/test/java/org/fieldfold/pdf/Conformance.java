package org.fieldfold.pdf;

import java.io.ByteArrayInputStream;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;

/** Asks veraPDF whether a file keeps PDF/UA-1 and PDF/A-2a. */
public final class Conformance {
    static {
        VeraGreenfieldFoundryProvider.initialise();
    }

    private Conformance() {}

    /** What a file fails in, as clause, test and message; empty for a file that keeps both standards. */
    public static List<String> failures(byte[] pdf) {
        Set<String> failures = new TreeSet<>();
        for (PDFAFlavour flavour : List.of(PDFAFlavour.PDFUA_1, PDFAFlavour.PDFA_2_A)) {
            try (PDFAParser parser = Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf),
                    flavour);
                    PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, false)) {
                var result = validator.validate(parser);
                result.getTestAssertions().stream().filter(a -> a.getStatus() == TestAssertion.Status.FAILED)
                        .forEach(a -> failures.add(flavour + " " + a.getRuleId().getClause() + "-"
                                + a.getRuleId().getTestNumber() + " " + a.getMessage()));
                if (!result.isCompliant() && failures.isEmpty()) {
                    failures.add(flavour + " not compliant, without a reason");
                }
            } catch (Exception e) {
                throw new IllegalStateException("veraPDF could not read the file", e);
            }
        }
        return List.copyOf(failures);
    }
}
