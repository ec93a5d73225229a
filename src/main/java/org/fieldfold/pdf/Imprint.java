package org.fieldfold.pdf;

import java.nio.charset.StandardCharsets;
import java.time.format.DateTimeFormatter;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;

/**
 * Who published what and when, said twice alike: in the information dictionary and as XMP, with the two
 * standards that the file keeps. PDF/A-2 asks that the properties of another standard be declared (ISO
 * 19005-2, 6.6.2.3.2).
 */
record Imprint(PrintJob job) {
    private static final String PRODUCER = "Fieldfold";
    /** Every issue dates from its day's midnight in Greenwich. */
    private static final String MIDNIGHT = "T00:00:00Z";

    COSDictionary information() {
        COSDictionary info = new COSDictionary();
        info.setString(COSName.TITLE, job.title());
        if (!job.subject().isBlank()) {
            info.setString(COSName.SUBJECT, job.subject());
        }
        info.setString(COSName.AUTHOR, job.publisher());
        info.setString(COSName.CREATOR, PRODUCER);
        info.setString(COSName.PRODUCER, PRODUCER);
        String date = "D:" + job.issued().format(DateTimeFormatter.BASIC_ISO_DATE) + "000000Z";
        info.setString(COSName.CREATION_DATE, date);
        info.setString(COSName.MOD_DATE, date);
        return info;
    }

    byte[] xmp() {
        String date = job.issued() + MIDNIGHT;
        StringBuilder out = new StringBuilder(4000);
        out.append("<?xpacket begin=\"\ufeff\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>\n"
                + "<x:xmpmeta xmlns:x=\"adobe:ns:meta/\">\n"
                + "<rdf:RDF xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\">\n"
                + "<rdf:Description rdf:about=\"\""
                + " xmlns:dc=\"http://purl.org/dc/elements/1.1/\""
                + " xmlns:xmp=\"http://ns.adobe.com/xap/1.0/\""
                + " xmlns:pdf=\"http://ns.adobe.com/pdf/1.3/\""
                + " xmlns:pdfaid=\"http://www.aiim.org/pdfa/ns/id/\""
                + " xmlns:pdfuaid=\"http://www.aiim.org/pdfua/ns/id/\""
                + " xmlns:pdfaExtension=\"http://www.aiim.org/pdfa/ns/extension/\""
                + " xmlns:pdfaSchema=\"http://www.aiim.org/pdfa/ns/schema#\""
                + " xmlns:pdfaProperty=\"http://www.aiim.org/pdfa/ns/property#\">\n");
        out.append("<pdfaid:part>2</pdfaid:part><pdfaid:conformance>A</pdfaid:conformance>\n"
                + "<pdfuaid:part>1</pdfuaid:part>\n");
        out.append("<dc:title><rdf:Alt><rdf:li xml:lang=\"x-default\">").append(escaped(job.title()))
                .append("</rdf:li></rdf:Alt></dc:title>\n");
        if (!job.subject().isBlank()) {
            out.append("<dc:description><rdf:Alt><rdf:li xml:lang=\"x-default\">").append(escaped(job
                    .subject())).append("</rdf:li></rdf:Alt></dc:description>\n");
        }
        String publisher = escaped(job.publisher());
        out.append("<dc:creator><rdf:Seq><rdf:li>").append(publisher)
                .append("</rdf:li></rdf:Seq></dc:creator>\n")
                .append("<dc:publisher><rdf:Bag><rdf:li>").append(publisher)
                .append("</rdf:li></rdf:Bag></dc:publisher>\n")
                .append("<dc:language><rdf:Bag><rdf:li>").append(job.language())
                .append("</rdf:li></rdf:Bag></dc:language>\n")
                .append("<dc:date><rdf:Seq><rdf:li>").append(job.year())
                .append("</rdf:li></rdf:Seq></dc:date>\n");
        out.append("<xmp:CreatorTool>" + PRODUCER + "</xmp:CreatorTool><pdf:Producer>" + PRODUCER
                + "</pdf:Producer>\n<xmp:CreateDate>").append(date)
                .append("</xmp:CreateDate><xmp:ModifyDate>").append(date).append("</xmp:ModifyDate>\n");
        out.append("<pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType=\"Resource\">"
                + "<pdfaSchema:schema>Universal accessibility</pdfaSchema:schema>"
                + "<pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI>"
                + "<pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>"
                + "<pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType=\"Resource\">"
                + "<pdfaProperty:name>part</pdfaProperty:name>"
                + "<pdfaProperty:valueType>Integer</pdfaProperty:valueType>"
                + "<pdfaProperty:category>internal</pdfaProperty:category>"
                + "<pdfaProperty:description>Part of ISO 14289 that the file keeps</pdfaProperty:description>"
                + "</rdf:li></rdf:Seq></pdfaSchema:property></rdf:li></rdf:Bag></pdfaExtension:schemas>\n"
                + "</rdf:Description>\n</rdf:RDF>\n</x:xmpmeta>\n<?xpacket end=\"r\"?>");
        return out.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
