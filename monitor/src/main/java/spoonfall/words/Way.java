package spoonfall.words;

/** Which way a pan that boils goes. */
enum Way {
    /** It climbs. */
    STEADILY,
    /** It hardly climbs. */
    SLOWLY,
    /** It falls, as off the heat. */
    FALLS
}
