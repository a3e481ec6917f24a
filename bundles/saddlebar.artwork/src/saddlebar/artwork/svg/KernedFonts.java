package saddlebar.artwork.svg;

import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.font.TextAttribute;
import java.io.InputStream;
import java.text.AttributedCharacterIterator;
import java.text.CharacterIterator;
import java.util.HashMap;
import java.util.Map;

import org.apache.batik.bridge.DefaultFontFamilyResolver;
import org.apache.batik.bridge.FontFace;
import org.apache.batik.bridge.FontFamilyResolver;
import org.apache.batik.gvt.font.AWTFontFamily;
import org.apache.batik.gvt.font.AWTGVTFont;
import org.apache.batik.gvt.font.AWTGVTGlyphVector;
import org.apache.batik.gvt.font.GVTFont;
import org.apache.batik.gvt.font.GVTFontFace;
import org.apache.batik.gvt.font.GVTFontFamily;
import org.apache.batik.gvt.font.GVTGlyphVector;

/** The platform's fonts with the kerning that they bring along, as every other program sets them; Batik leaves it out. */
final class KernedFonts implements FontFamilyResolver {
    private static final FontFamilyResolver PLATFORM = DefaultFontFamilyResolver.SINGLETON;

    @Override
    public GVTFontFamily resolve(String familyName) {
        return kerned(PLATFORM.resolve(familyName));
    }

    @Override
    public GVTFontFamily resolve(String familyName, FontFace fontFace) {
        return kerned(PLATFORM.resolve(familyName, fontFace));
    }

    @Override
    public GVTFontFamily loadFont(InputStream in, FontFace fontFace) throws Exception {
        throw new SecurityException("no font outside the drawing is opened");
    }

    @Override
    public GVTFontFamily getDefault() {
        return kerned(PLATFORM.getDefault());
    }

    @Override
    public GVTFontFamily getFamilyThatCanDisplay(char c) {
        return kerned(PLATFORM.getFamilyThatCanDisplay(c));
    }

    private static GVTFontFamily kerned(GVTFontFamily family) {
        return family instanceof AWTFontFamily ? new Family(family.getFontFace()) : family;
    }

    private static final class Family extends AWTFontFamily {
        Family(GVTFontFace face) {
            super(face);
        }

        @Override
        public GVTFont deriveFont(float size, AttributedCharacterIterator characters) {
            return deriveFont(size, characters.getAttributes());
        }

        @Override
        public GVTFont deriveFont(float size, Map attributes) {
            Map<AttributedCharacterIterator.Attribute, Object> ofFont = new HashMap<>();
            for (Object one : attributes.entrySet()) {
                if (one instanceof Map.Entry<?, ?> entry && entry.getKey() instanceof AttributedCharacterIterator.Attribute key
                        && key != TEXT_COMPOUND_DELIMITER) {
                    ofFont.put(key, entry.getValue());
                }
            }
            ofFont.put(TextAttribute.SIZE, size);
            ofFont.put(TextAttribute.FAMILY, fontFace.getFamilyName());
            ofFont.put(TextAttribute.KERNING, TextAttribute.KERNING_ON);
            return new Kerned(ofFont);
        }
    }

    private static final class Kerned extends AWTGVTFont {
        Kerned(Map<AttributedCharacterIterator.Attribute, Object> attributes) {
            super(attributes);
        }

        @Override
        public GVTGlyphVector createGlyphVector(FontRenderContext context, CharacterIterator characters) {
            StringBuilder text = new StringBuilder();
            for (char c = characters.first(); c != CharacterIterator.DONE; c = characters.next()) {
                if (c >= 0x0590) { // right to left, joined or stacked: only Batik knows which letter stands where
                    return super.createGlyphVector(context, characters);
                }
                text.append(c);
            }
            char[] letters = text.toString().toCharArray();
            GlyphVector kerned = awtFont.layoutGlyphVector(context, letters, 0, letters.length, java.awt.Font.LAYOUT_LEFT_TO_RIGHT);
            return kerned.getNumGlyphs() != letters.length
                    ? super.createGlyphVector(context, characters)
                    : new AWTGVTGlyphVector(new SetGlyphs(kerned), this, scale, characters);
        }
    }
}
