/** For AWS Lambda behind API Gateway (events of version 1 and 2), a function URL or a load balancer. */
import { type APIGatewayProxyResult, handle, type LambdaEvent } from "hono/aws-lambda";
import { app } from "../app.js";

export const handler: (event: LambdaEvent) => Promise<APIGatewayProxyResult> = handle(app);
