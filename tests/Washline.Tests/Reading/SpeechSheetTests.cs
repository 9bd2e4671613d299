using Washline.App.Sheets;
using Washline.Drinks;
using Washline.Reading;
using Washline.Reading.Speech;

namespace Washline.Tests.Reading;

public class SpeechSheetTests
{
    [Fact]
    public void The_sheet_of_a_talk_shows_time_certainty_words_and_what_was_mended()
    {
        var draft = Spoken.Read("[0:05] this one is called the Slate Roof\n[1:07] two ounces of gin\n[1:12] and half an ounce of fall or num\n", Kinds.Catalogue);
        Assert.Equal(
            """
            Heard in Slate Roof

              1:07   100 % sure   gin        “two ounces gin”
              1:12    85 % sure   falernum   “half an ounce fall or num”   “fall or num” taken for falernum


            """, SpeechSheet.Of(draft).ReplaceLineEndings("\n"));
    }

    [Fact]
    public void Without_times_the_sheet_shows_line_and_column() =>
        Assert.Contains("2:5   100 % sure   gin", SpeechSheet.Of(Spoken.Read("so\nand two ounces of gin", Kinds.Catalogue)));

    [Fact]
    public void A_written_text_has_no_such_sheet() => Assert.Equal("", SpeechSheet.Of(Draft.Read("Slate Roof\n2 oz gin\n", Kinds.Catalogue)));
}
