namespace Washline.Reading.Speech;

/// <summary>Turns of phrase by which people talk their way through a drink.</summary>
internal static class Ways
{
    /// <summary>Words that fill a gap and say nothing.</summary>
    public static readonly Phrases Fillers = new(
        "um|uh|er|erm|uhm|hmm|mm|ah|oh|like|you know|i mean|i think|i guess|i want to say|lets see|let me see|let me think|let me check|what was it|what is it|what do you call it|whats it called|hang on|hold on|" +
        "lets call it|call it|sort of|kind of|basically|literally|just|maybe|perhaps|probably|about|roughly|around|approximately|well|yeah|yes|right|okay|ok|simply|exactly|something like|more or less|or so|ish|please|mind|also|good old|what have you|drum roll");

    /// <summary>Words in front of an ingredient that are no part of its name.</summary>
    public static readonly HashSet<string> Determiners =
        ["the", "a", "an", "our", "your", "my", "his", "her", "their", "some", "any", "more", "another", "this", "that", "these", "those", "its", "whatever", "which"];

    /// <summary>Words that say how an ingredient is, not which.</summary>
    public static readonly HashSet<string> Praise =
    [
        "good", "nice", "lovely", "really", "very", "great", "beautiful", "gorgeous", "decent", "cheap", "expensive", "favourite", "favorite", "plain", "regular", "normal", "ordinary", "standard", "classic", "same", "lovely",
        "delicious", "cold", "chilled", "fresh", "freshly", "squeezed", "pressed", "strained", "homemade", "house", "made", "home", "little", "big", "proper", "simple", "wonderful", "amazing", "fancy", "old", "whole", "real", "decent",
        "super", "pretty", "solid", "local", "fantastic", "fine", "trusty", "aforementioned", "quality", "single",
    ];

    /// <summary>Words between a number and its unit that leave both as they are.</summary>
    public static readonly Phrases Measured = new(
        "good|full|fat|big|generous|healthy|scant|small|tiny|level|heaped|heaping|proper|solid|whole|nice|little|more|single|decent|hefty|us|uh|um|er|like|or so|odd|quick|short|bare|light|heavy|very|flat|us fluid|extra|straight|even|cheeky|standard");

    /// <summary>The speaker takes back what was said right before.</summary>
    public static readonly Phrases Correcting = new(
        "no|nope|sorry|wait|oops|whoops|make that|make it|make this|i mean|i meant|i meant to say|i should say|i should have said|scratch that|strike that|correction|correct that|rather|or rather|my mistake|my bad|i tell a lie|tell a lie|i lied|i lie|" +
        "actually|excuse me|pardon|pardon me|not that|thats wrong|thats not right|lets say|lets make it|lets make that|lets do|lets go|lets go with|change that|change it|changed my mind|come to think of it|on second thought|on second thoughts|" +
        "hang on|hold on|should be|it should be|that should be|should have been|ought to be|bump that|bump it|bring that|take that|better|wrong|misspoke|misread|i misspoke|apologies");

    /// <summary>The firm ones among them, after which another ingredient takes the place of the one before.</summary>
    public static readonly Phrases Firmly = new(
        "no|nope|sorry|wait|oops|whoops|i mean|i meant|i meant to say|i should say|scratch that|strike that|correction|or rather|my mistake|my bad|i tell a lie|tell a lie|i lied|excuse me|pardon|pardon me|thats wrong|misspoke|make that|apologies|not that");

    /// <summary>The speaker takes back a whole ingredient.</summary>
    public static readonly Phrases Retracting = new("just kidding|im kidding|only kidding|im joking|just joking|dont do that|i never do that|scratch all that|forget i said that");

    /// <summary>What follows is somebody else's, another day's or only a thought.</summary>
    public static readonly Phrases Supposing = new(
        "if you like|if you want|if you prefer|if you wanted|if you are|if youre|if yours|if its|if they|if the|if theres|if it|if your|if somebody|if someone|if anyone|some people|some folks|some bartenders|some bars|some places|somebody|someone|people say|people will|people put|a lot of people|most people|" +
        "last time|last week|last night|last year|last month|last summer|last winter|yesterday|the other day|the other night|years ago|back then|back in the day|in those days|in my day|used to|i once|once i|one time|when i was|when i first|the first time|" +
        "could go|you could|you can also|you can go|you might|you may|i might|could use|could add|could do|could put|up to|as much as|as high as|never|dont|do not|didnt|doesnt|wouldnt|instead of|rather than|not|without|no more than|more than|less than|try it with|tried it with|also works with|next time|next week|imagine|" +
        "other recipes|other versions|another version|most recipes|the old books|the old recipe|old version|some versions|theyd|hed|shed have|they put|they used|he used|costs|cost me|per bottle|bottle of");

    /// <summary>Behind an amount: it was only a thought.</summary>
    public static readonly Phrases IfLiked = new("if you like|if you want|if you prefer|if its|if your|if youre|works too|would work|will work|is too much|is too little|isnt enough|is not enough|would be too|wasnt enough|was too|is way too");

    /// <summary>What comes next is for show and scent.</summary>
    public static readonly Phrases Garnishing = new("garnish|garnish with|garnished|garnished with|garnish it with|garnishing|for garnish|for the garnish|for a garnish|express|decorate with|finish with|to finish");

    /// <summary>What came before was.</summary>
    public static readonly Phrases OnTop = new("on top|for garnish|for the garnish|for a garnish|for my garnish|as a garnish|as the garnish|as garnish|to garnish|on the rim|over the top|on a pick|on a skewer|on the side|on the edge|and express|for decoration|floated on|floating on");

    /// <summary>The spec's own wish.</summary>
    public static readonly Phrases CalledFor = new(
        "calls for|call for|called for|asks for|ask for|asked for|says to use|recipe says|spec says|book says|card says|says|supposed to be|meant to be|supposed to use|supposed to have|should be|should have|should really be|ought to be|original is|original has|original uses|the original|originally|traditionally|spec is|spec has|recipe is|recipe has|recipe wants|spec wants|wants|wanted|" +
        "recipe uses|spec uses|would normally|normally|he uses|she uses|they use|uses|really wants|is written with|was written with|specifies|normally take|normally use|usually use|in the book|on the card");

    /// <summary>What the spec wants and the speaker does not have.</summary>
    public static readonly Phrases Lacking = new(
        "instead of|in place of|rather than|in lieu of|standing in for|stands in for|stand in for|filling in for|out of|run out of|ran out of|no more|dont have|do not have|dont have any|do not have any|havent got|havent got any|dont own|dont keep|couldnt find|couldnt get|cant get|cant find|didnt have|didnt have any|ive no|i have no|have no|" +
        "weve no|theres no|substitute for|sub for|replacing|replaces|replace|replaced|swap out|swapping out|swapped out|swap|swapping|swapped|switching out|not|skip|skipping");

    /// <summary>What the speaker uses.</summary>
    public static readonly Phrases Using = new(
        "im using|i am using|i use|ill use|i will use|ill be using|im gonna use|im going to use|were using|we use|well use|were gonna use|were going to use|using|i used|we used|ive used|im going with|im gonna go with|im going to go with|going with|i go with|im going for|i went with|we went with|ive got|i have|ive only got|i only have|i only ever have|i always have|i only had|i pour|we pour|ill pour|ive just got|i just have|weve got|we have|we only have|all i have is|all ive got is|all i had was|" +
        "only got|only have|whats in the house is|theres only|i do have|ive got here is|im putting|im putting in|im pouring|im adding|im subbing|im subbing in|subbing in|sub in|subbed in|im substituting|substituting|im reaching for|im taking|reached for|i put|i put in|putting in|mine is|mines|mine has|with|for|it will be|itll be|its going to be|goes in is|in goes|gets|be using|be going with|make do with|making do with|settle for|settling for|im doing|todays is|youre getting|youll get|so its|today its");

    /// <summary>Said with them, it is a swap and no second ingredient.</summary>
    public static readonly Phrases Swapping = new(
        "but|only|instead|out of|dont have|do not have|havent got|didnt have|couldnt find|couldnt get|cant get|cant find|swap|swapping|swapped|sub|subbing|subbed|substituting|replacing|replaced|replace|ive no|have no|theres no|no more|make do|making do|in place of|rather than|in lieu of|standing in|stands in|filling in|settle for|however|whereas|mine|though|im out|were out|run out|ran out|switching|trading|traded|all i have|all ive got");

    /// <summary>Days, which a capital makes no name.</summary>
    public static readonly HashSet<string> Days = ["monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday", "today", "todays", "tonight", "tonights", "yesterday", "tomorrow"];

    /// <summary>Measures of the market, not of the bar.</summary>
    public static readonly HashSet<string> Bulk =
        ["kilos", "kilo", "pounds", "pound", "grams", "gram", "boxes", "box", "bags", "bag", "bottles", "bottle", "crates", "cases", "case", "jars", "glasses", "kinds", "types", "sorts", "styles", "brands"];

    /// <summary>Plain words that sound like an ingredient and are none.</summary>
    public static readonly HashSet<string> Plainly =
    [
        "drink", "drinks", "enough", "home", "time", "people", "water", "work", "mine", "yours", "hers", "more", "less", "most", "some", "many", "much", "times", "kind", "sort", "course", "those", "ours", "theirs", "everyone", "fun", "life", "love", "money", "space", "room", "air", "music", "light", "rain", "sun", "summer", "winter", "history", "advice",
        "course", "difference", "fact", "power", "patience", "trouble", "talk", "truth", "sense", "colour", "color", "flavour", "flavor", "sweetness", "acid", "alcohol", "booze", "liquid", "volume", "dilution", "ice", "foam", "magic", "something", "anything", "nothing", "everything", "weeks", "days", "hours", "minutes", "total", "minute", "second", "pour", "measure", "measures", "jigger",
    ];

    /// <summary>Words at which the name of an ingredient or a drink ends.</summary>
    public static readonly HashSet<string> Stops =
    [
        "and", "but", "so", "then", "because", "cause", "cos", "i", "im", "ive", "ill", "id", "you", "youre", "youll", "youd", "we", "were", "weve", "well", "it", "its", "itll", "thats", "which", "who", "is", "are", "was", "be", "been", "in", "into", "to", "with", "for",
        "from", "on", "at", "if", "when", "while", "no", "sorry", "actually", "or", "not", "now", "next", "he", "she", "they", "theyre", "hes", "shes", "there", "theres", "here", "heres", "what", "whats", "where", "why", "how", "goes", "go", "going", "gonna", "gotta", "get", "gets", "got",
        "have", "has", "had", "do", "does", "did", "dont", "doing", "make", "makes", "making", "put", "add", "pour", "shake", "stir", "strain", "top", "give", "take", "use", "using", "want", "wants", "need", "let", "lets", "start", "can", "could", "would", "should", "will", "wont",
        "too", "also", "again", "before", "after", "until", "till", "over", "under", "as", "by", "up", "off", "out", "down", "back", "yes", "yeah", "ok", "okay", "right", "please", "say", "says", "said", "tell", "think", "know", "see", "look", "come", "came", "comes",
        "anyway", "alright", "cheers", "thanks", "first", "finally", "lastly", "plus", "followed", "that", "this", "these", "those", "them", "me", "us", "him", "really", "just", "only", "even", "still", "never", "always", "than", "um", "uh", "er", "hey", "hi", "hello", "each", "per", "today", "tonight", "everybody", "everyone", "guys", "folks",
        "combine", "build", "fill", "ice", "serve", "served", "garnish", "shaker", "tin", "glass", "mixing", "everything", "whatever", "someone", "somebody", "my", "your", "our", "their", "his", "her", "welcome", "hope", "remember", "mind", "careful", "although", "though", "since", "unless", "whole", "thing", "things", "stuff", "way", "bit", "lot", "love", "like", "likes", "meant", "hear", "heard", "instead", "rather", "stayed", "fun", "done", "really",
    ];

    /// <summary>Words that make the word before them longer: a kind of thing, named last.</summary>
    public static readonly HashSet<string> Heads =
    [
        "juice", "syrup", "liqueur", "bitters", "brandy", "rum", "whiskey", "whisky", "wine", "water", "vermouth", "sherry", "cordial", "puree", "cream", "milk", "tea", "soda", "beer", "ale", "salt", "tequila", "gin", "vodka", "aperitif", "aperitivo", "amaro", "solution", "nectar",
        "leaves", "leaf", "sprigs", "sprig", "wedges", "wedge", "slices", "slice", "wheels", "cube", "cubes", "white", "whites", "yolk", "yolks", "peel", "peels", "twist", "twists", "zest", "pulp", "powder", "sugar", "brine", "dram", "chunks", "chunk", "beans",
    ];

    /// <summary>Those among them that people leave out.</summary>
    public static readonly string[] LeftOut = ["tequila", "rum", "whisky", "gin", "vermouth", "sherry", "brandy", "liqueur", "bitters"];

    /// <summary>Words that may stand between an ingredient and the amount that belongs to it.</summary>
    public static readonly HashSet<string> Links =
    [
        "about", "roughly", "is", "was", "thats", "so", "it", "its", "were", "well", "do", "doing", "did", "use", "using", "goes", "going", "gonna", "in", "at", "gets", "get", "want", "you", "youll", "just", "maybe", "like", "need", "to", "be", "with", "i", "im", "ill", "we", "she", "he", "they", "had", "has", "have", "take", "takes",
        "here", "for", "and", "um", "uh", "er", "say", "around", "put", "comes", "a", "good", "next", "now", "going", "probably", "only", "there", "of", "which", "right", "okay", "ok", "please", "lets", "go", "thatll", "youre", "ive", "got", "youve", "on", "her", "his", "card", "fresh", "then", "oh", "yeah", "pour", "add", "adding", "another", "measure", "make",
        "will", "call", "that", "the", "first", "again", "mind", "recipe", "amount", "calls", "asks", "wants", "all",
    ];
}
