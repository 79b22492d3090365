using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Files;
using Gudgeon.Book.Jobs;
using Gudgeon.Book.Store;
using Gudgeon.Book.Tests.Store;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Tests.Jobs;

/// <summary>Job cards worked as people work them, in either form of a book.</summary>
public sealed class CardTests : IDisposable
{
    private const string Card = """
        { "id": "cap", "title": "Cap on", "stage": "trial", "hours": "2 h", "checks": ["squish"],
          "steps": [
            { "id": "clean", "do": "Clean.", "hold": true },
            { "id": "gap", "read": "piston.topRingGap" },
            { "id": "ring", "renew": "O-ring" },
            { "id": "bolts", "tighten": "cap" },
            { "id": "soak", "wait": "8 h", "text": "Soak" } ] }
        """;

    private static readonly CardWork Ada = new("Ada", "2026-11-29T08:00:00Z");
    private static readonly CardWork Tom = new("Tom", "2026-11-29T17:00:00Z");

    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Every_card_of_the_program_is_whole()
    {
        Assert.True(CardCatalogue.All.Count >= 25);
        Assert.Equal(CardCatalogue.All.Count, CardCatalogue.All.Select(c => c.Id).Distinct().Count());
        var ids = CardCatalogue.All.Select(c => c.Id).ToHashSet();
        var checks = CheckCatalogue.All.Select(c => c.Id).ToHashSet();
        Assert.All(CardCatalogue.All, c =>
        {
            Assert.Empty(c.After.Except(ids));
            Assert.Empty(c.Checks.Select(k => k.Split('[')[0]).Except(checks));
            Assert.True(c.Hours > 0);
        });
        Assert.Contains(CriticalPath.FirstStart, ids);
    }

    [Fact]
    public void Only_cards_that_the_parts_call_for_appear()
    {
        var bare = Books.Of(("engine.cylinders", "1"));
        var blown = bare.Set(("belt.kind", "toothed"));
        Assert.DoesNotContain(CardStates.Of(bare, bare.Now()), c => c.Card.Id == "drive");
        Assert.Contains(CardStates.Of(blown, blown.Now()), c => c.Card.Id == "drive");
        Assert.Equal("the book does not call for the job card 'drive': it has none of belt", Assert.Throws<BadInputException>(() => CardStates.Find(bare, bare.Now(), "drive")).Message);
    }

    [Theory]
    [InlineData("wren.json")]
    [InlineData("wren.gudgeon")]
    public void A_card_is_worked_from_the_first_tick_to_the_signature(string name)
    {
        var file = Begin(name);
        Refused("cap, ring: held until this is done: Clean.", () => file.Work(b => Ada.Tick(b, "cap", "ring", "", "batch 7", "")));
        file = file.Work(b => Ada.Tick(b, "cap", "clean", "", "", ""));
        Refused("cap, clean: done already, by Ada at 2026-11-29T08:00:00Z", () => file.Work(b => Tom.Tick(b, "cap", "clean", "", "", "")));
        Refused("cap, ring: used once; wanted the batch, number or bag of the new one", () => file.Work(b => Ada.Tick(b, "cap", "ring", "", "", "")));
        file = file.Work(b => Ada.Tick(b, "cap", "ring", "", "batch 7", ""));
        Refused("cap, gap@1: done by a reading of piston[1].topRingGap, such as gudgeon measure piston[1].topRingGap VALUE --with INSTRUMENT --by NAME", () => file.Work(b => Ada.Tick(b, "cap", "gap@1", "", "", "")));
        file = file.Measure("piston[1].topRingGap", "0.34 mm", "feeler", "Ada", "2026-11-29", "");
        file = Tightened(file);
        Refused("cap, soak: was not begun yet", () => file.Work(b => Tom.Tick(b, "cap", "soak", "", "", "")));
        file = file.Work(b => Ada.Start(b, "cap", "soak"));
        Refused("cap, soak: 8 h wanted, 0.0 h gone; to end it sooner takes a note that says why", () => file.Work(b => Ada.Tick(b, "cap", "soak", "", "", "")));
        Refused("cap: 1 of 5 steps is not done; the next is: Soak (8 h)", () => Sign(file, Ada, "it will do"));
        file = file.Work(b => Tom.Tick(b, "cap", "soak", "", "", ""));
        file = Sign(file, Tom, "");
        var card = State(BookFile.Open(_folder.PathOf(name)));
        Assert.Equal((Standing.Signed, "Tom", 5), (card.Standing, card.Signature!.By, card.StepsDone));
        Assert.Contains("piston[1].topRingGap", card.Signature.Reads.Keys);
        Refused("cap: is signed, by Tom at 2026-11-29T17:00:00Z; open it again first", () => file.Work(b => Ada.Untick(b, "cap", "clean", "dirt")));
        Refused("cap: signed already, by Tom at 2026-11-29T17:00:00Z", () => Sign(file, Ada, ""));
        if (file is StoredBook)
        {
            Stores.VerifiesWell(_folder.PathOf(name));
        }
    }

    [Fact]
    public void Bolts_are_ticked_in_their_order_and_with_the_wrench_named()
    {
        var file = Begin("wren.json").Work(b => Ada.Tick(b, "cap", "clean", "", "", ""));
        var step = State(file).Find("bolts")!;
        Assert.Equal([(1, 4), (2, 4), (3, 4), (4, 4)], step.Stages.Select(s => (s.Number, s.Bolts.Count)));
        var first = step.Next!.Value.Bolt;
        var last = step.Stages[0].Bolts[^1];
        Refused($"cap, {first.Key}: wanted the wrench that it was tightened with", () => file.Work(b => Ada.Tick(b, "cap", first.Key, "", "3 N·m", "")));
        Refused($"cap, {last.Key}: bolt {first.Number} of stage 1 comes first (to 3 N·m)", () => file.Work(b => Ada.Tick(b, "cap", last.Key, "wrench", "3 N·m", "")));
        file = file.Work(b => Ada.Tick(b, "cap", first.Key, "wrench", "3 N·m", ""));
        Assert.Equal((first.Key, "wrench", "3 N·m"), State(file).Acts[^1] is var act ? (act.Step, act.With, act.Value) : default);
        Assert.NotEqual(first.Key, State(file).Find("bolts")!.Next!.Value.Bolt.Key);
        file = file.Work(b => Ada.Untick(b, "cap", first.Key, "wrong wrench"));
        Assert.Equal(first.Key, State(file).Find("bolts")!.Next!.Value.Bolt.Key);
    }

    [Fact]
    public void A_tool_of_the_books_is_kept_with_how_its_calibration_stood()
    {
        var file = Begin("wren.json").Set("instrument[w10].kind", "torque wrench", Stores.NoStory).Set("instrument[w10].due", "2026-10-31", Stores.NoStory)
            .Work(b => Ada.Tick(b, "cap", "clean", "w10", "", ""));
        Assert.Equal("w10 (calibration overdue since 2026-10-31)", State(file).Acts[^1].With);
        file = file.Set("instrument[w10].due", "2027-10-31", Stores.NoStory).Work(b => Ada.Tick(b, "cap", "ring", "w10", "batch 7", ""));
        Assert.Equal("w10 (calibration due 2027-10-31)", State(file).Acts[^1].With);
    }

    [Fact]
    public void What_falls_short_is_signed_only_with_a_reason_that_stays_in_the_book()
    {
        var file = AllDone(Begin("wren.json").Limit("squish.min", "3 mm", "to see"));
        Assert.StartsWith("cap: not to be signed: squish[1] falls short: ", Assert.Throws<BadInputException>(() => Sign(file, Tom, "")).Message, StringComparison.Ordinal);
        var signed = State(Sign(file, Tom, "trial assembly"));
        Assert.Equal((Standing.Signed, "trial assembly"), (signed.Standing, signed.Signature!.Note));
        Assert.StartsWith("squish[1] falls short: ", Assert.Single(signed.Signature.Overridden), StringComparison.Ordinal);
    }

    [Fact]
    public void A_value_that_moves_after_the_signature_opens_the_card_again_and_says_why()
    {
        var file = Sign(AllDone(Begin("wren.gudgeon")), Tom, "as it is");
        Assert.Equal(Standing.Signed, State(file).Standing);
        file = file.Measure("piston[1].topRingGap", "0.41 mm", "feeler", "Ada", "2026-11-30", "");
        var again = State(file);
        Assert.Equal((Standing.LookAgain, "piston[1].topRingGap was 0.34 mm when it was signed, and is 0.41 mm"), (again.Standing, Assert.Single(again.LookAgain)));
        Assert.Equal(Standing.Signed, State(Sign(file, Ada, "looked at")).Standing);
        Assert.Equal("opened again by Ada: noise", Assert.Single(State(BookFile.Open(_folder.PathOf("wren.gudgeon")).Work(b => Ada.Reopen(b, "cap", "noise"))).LookAgain));
    }

    [Fact]
    public void Cards_wait_for_those_before_them_and_for_parts()
    {
        var book = Books.Of(("engine.cylinders", "1"), ("part[hone].name", "hone stones"), ("part[hone].state", "ordered"), ("part[hone].card", "strip"), ("part[hone].orderedOn", "2026-12-01"), ("part[hone].leadTime", "10 d"));
        var cards = CardStates.Of(book, book.Now());
        Assert.Equal(["part hone stones (ordered, promised for 2026-12-11)"], cards.First(c => c.Card.Id == "strip").WaitsFor);
        Assert.Equal(["Strip the engine"], cards.First(c => c.Card.Id == "clean").WaitsFor);
    }

    [Fact]
    public void A_card_that_is_left_out_is_passed_over()
    {
        var file = Begin("wren.json");
        Refused("a card left out needs a reason", () => file.Work(b => Ada.LeaveOut(b, "strip", " ")));
        file = file.Work(b => Ada.LeaveOut(b, "strip", "came stripped"));
        Assert.Equal(Standing.Ready, CardStates.Find(file.Book, file.Book.Now(), "clean").Standing);
        file = file.Work(b => Ada.TakeIn(b, "strip"));
        Assert.Equal(Standing.Waiting, CardStates.Find(file.Book, file.Book.Now(), "clean").Standing);
    }

    [Theory]
    [InlineData("""{ "id": "x", "title": "X", "stage": "s", "hours": "2 mm", "steps": [{ "id": "a", "do": "A" }] }""", "x.json, line 1, the card.hours: the time: given '2 mm'")]
    [InlineData("""{ "id": "x", "title": "X", "stage": "s", "hours": "2 h", "steps": [] }""", "missing 'steps'")]
    [InlineData("""{ "id": "x", "title": "X", "stage": "s", "hours": "2 h", "steps": [{ "id": "a", "do": "A", "wait": "1 h" }] }""", "wanted just one of do, read, tighten, wait, renew, photo; given do and wait")]
    [InlineData("""{ "id": "x", "title": "X", "stage": "s", "hours": "2 h", "steps": [{ "id": "a", "read": "piston.topRingGp" }] }""", "the nearest is 'piston.topRingGap'")]
    [InlineData("""{ "id": "x", "title": "X", "stage": "s", "hours": "2 h", "when": ["blowr"], "steps": [{ "id": "a", "do": "A" }] }""", "given 'blowr'")]
    public void A_card_that_cannot_be_taken_is_refused_in_one_sentence(string text, string sentence) =>
        Assert.Contains(sentence, Assert.Throws<BadInputException>(() => Begin("wren.json").PutCard(text, "x.json")).Message, StringComparison.Ordinal);

    [Fact]
    public void A_card_of_the_books_own_takes_the_place_of_the_programs()
    {
        var file = Begin("wren.gudgeon");
        var own = CardCatalogue.Written(file, "strip").Replace("Strip the engine", "Take it apart", StringComparison.Ordinal);
        file = file.PutCard(own, "strip.json");
        Assert.Equal(("Take it apart", true), CardStates.Find(file.Book, file.Book.Now(), "strip").Card is var card ? (card.Title, card.Own) : default);
        Assert.Equal(CardCatalogue.Of(file.Book).Count, CardCatalogue.All.Count + 1);
        Stores.VerifiesWell(_folder.PathOf("wren.gudgeon"));
        Stores.Same(file.Book, file.CopyTo(_folder.PathOf("copy.json")).Book);
    }

    [Theory]
    [InlineData("start", "yesterday", "acts[0].on: given 'yesterday', wanted a time in UTC such as 2026-11-29T08:00:00Z")]
    [InlineData("begin", "2026-11-29T08:00:00Z", "acts[0].act: given 'begin', wanted tick or untick or start")]
    public void An_act_that_cannot_be_is_refused_where_it_is_read(string act, string on, string sentence)
    {
        var path = _folder.Write("x.json", $$"""{ "gudgeon": 1, "name": "x", "acts": [{ "card": "clutch", "step": "soak", "act": "{{act}}", "by": "Ada", "on": "{{on}}" }] }""");
        Assert.Contains(sentence, Assert.Throws<BadInputException>(() => BookFile.Open(path)).Message, StringComparison.Ordinal);
    }

    private static void Refused(string sentence, Action act) => Assert.Equal(sentence, Assert.Throws<BadInputException>(act).Message);

    private static CardState State(BookFile file) => CardStates.Find(file.Book, file.Book.Now(), "cap");

    private static BookFile Sign(BookFile file, CardWork who, string because)
    {
        var now = file.Book.Now();
        var examined = Examined.Of(State(file), now, new Appraiser(new DutyDesk()));
        return file.Work(b => who.Sign(b, "cap", examined, because));
    }

    private static BookFile Tightened(BookFile file)
    {
        while (State(file).Find("bolts")!.Next is { } next)
        {
            file = file.Work(b => Ada.Tick(b, "cap", next.Bolt.Key, "wrench", next.Stage.Stage.Words(imperial: false), ""));
        }

        return file;
    }

    private static BookFile AllDone(BookFile file)
    {
        file = file.Work(b => Ada.Tick(b, "cap", "clean", "", "", "")).Work(b => Ada.Tick(b, "cap", "ring", "", "batch 7", "")).Measure("piston[1].topRingGap", "0.34 mm", "feeler", "Ada", "2026-11-29", "");
        return Tightened(file).Work(b => Ada.Start(b, "cap", "soak")).Work(b => Tom.Tick(b, "cap", "soak", "", "", ""));
    }

    private BookFile Begin(string name)
    {
        (string Path, string Value)[] values =
        [
            ("engine.cylinders", "1"), ("joint[cap].bolts", "4"), ("joint[cap].torque", "10 N·m"),
            ("crank.stroke", "60 mm"), ("rod.length", "110 mm"), ("cylinder.deckHeight", "0.4 mm"), ("cylinder.gasketThickness", "0.8 mm"),
        ];
        var file = BookFile.Create(_folder.PathOf(name), "Wren", new Hand("Ada", "bench"));
        file = values.Aggregate(file, (f, v) => f.Set(v.Path, v.Value, Stores.NoStory));
        return file.PutCard(Card, "cap.json");
    }
}
