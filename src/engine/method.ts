/** Version of the calculation. It changes whenever the same course could get another answer (CHANGELOG). */
export const METHOD_VERSION = "1.1.0"
